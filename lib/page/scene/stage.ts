import {
  Color,
  DirectionalLight,
  HemisphereLight,
  Mesh,
  PCFShadowMap,
  PerspectiveCamera,
  PlaneGeometry,
  Scene,
  ShadowMaterial,
  WebGLRenderer,
} from 'three';
import type { Box } from './box.ts';

/** Renderer, light and floor: a bright room with one large window to the left. */
export interface Stage {
  readonly scene: Scene;
  readonly camera: PerspectiveCamera;
  readonly renderer: WebGLRenderer;
  /** Aims light and shadow at what there is to see. */
  light(box: Box): void;
  /** Something that casts a shadow has moved. */
  moved(): void;
  dispose(): void;
}

/** Degrees, upright: a long lens, as for a photograph of furniture. */
export const FIELD = 26;

/** Pixels of the screen to one of the page: more is not seen, and costs time. */
const MOST_PIXELS = 2;

/** Undefined where the browser has no WebGL. */
export function makeStage(): Stage | undefined {
  let renderer: WebGLRenderer;
  try {
    renderer = new WebGLRenderer({ antialias: true, alpha: true });
  } catch {
    return undefined;
  }
  renderer.setPixelRatio(Math.min(MOST_PIXELS, globalThis.devicePixelRatio));
  renderer.shadowMap.enabled = true;
  renderer.shadowMap.type = PCFShadowMap;
  renderer.shadowMap.autoUpdate = false;

  const scene = new Scene();
  const camera = new PerspectiveCamera(FIELD, 1, 50, 60000);
  camera.up.set(0, 0, 1);
  const key = new DirectionalLight(new Color('#fff1dc'), 2.3);
  key.castShadow = true;
  key.shadow.mapSize.set(2048, 2048);
  key.shadow.radius = 5;
  key.shadow.normalBias = 3;
  key.shadow.intensity = 0.9;
  const fill = new DirectionalLight(new Color('#e9eefb'), 0.95);
  const below = new DirectionalLight(new Color('#fff3e2'), 0.5);
  const sky = new HemisphereLight(new Color('#fffaf2'), new Color('#b7a48f'), 1.25);
  sky.position.set(0, 0, 1);
  const floor = new Mesh(new PlaneGeometry(40000, 40000), new ShadowMaterial({ opacity: 0.22, color: '#4a3826' }));
  floor.receiveShadow = true;
  scene.add(sky, key, key.target, fill, fill.target, below, below.target, floor);

  return {
    scene,
    camera,
    renderer,
    light({ min, max }) {
      const middle = [0, 1, 2].map((k) => (min[k]! + max[k]!) / 2) as [number, number, number];
      const reach = Math.hypot(max[0] - min[0], max[1] - min[1], max[2] - min[2]) * 0.62;
      for (const [lamp, from] of [
        [key, [-0.45, -0.62, 1.35]],
        [fill, [0.9, -0.5, 0.5]],
        [below, [0.3, -0.5, -0.8]],
      ] as const) {
        lamp.target.position.set(...middle);
        lamp.position.set(
          middle[0] + from[0] * 3 * reach,
          middle[1] + from[1] * 3 * reach,
          middle[2] + from[2] * 3 * reach,
        );
        lamp.target.updateMatrixWorld();
      }
      Object.assign(key.shadow.camera, {
        left: -reach,
        right: reach,
        top: reach,
        bottom: -reach,
        near: reach,
        far: 8 * reach,
      });
      key.shadow.camera.updateProjectionMatrix();
      floor.position.set(0, 0, min[2]);
      renderer.shadowMap.needsUpdate = true;
    },
    moved() {
      renderer.shadowMap.needsUpdate = true;
    },
    dispose() {
      floor.geometry.dispose();
      floor.material.dispose();
      key.shadow.dispose();
      renderer.dispose();
      renderer.forceContextLoss();
    },
  };
}
