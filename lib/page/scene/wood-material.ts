import { Color, type IUniform, MeshStandardMaterial, SRGBColorSpace, Vector4 } from 'three';
import { MOST_BOARDS } from '../../derive/scene/scene-boards.ts';
import type { Rgb, ScenePart, WoodLook } from '../../derive/scene/scene-data.ts';
import { WOOD_HEAD, WOOD_SHEEN } from './wood-shader.ts';

/** The material of one part. All share one program; each has numbers of its own. */
export interface WoodMaterial {
  readonly material: MeshStandardMaterial;
  set(part: ScenePart, look: WoodLook): void;
  tint(on: boolean): void;
}

export const colorOf = ([r, g, b]: Rgb): Color => new Color().setRGB(r / 255, g / 255, b / 255, SRGBColorSpace);

type Uniforms = Record<string, IUniform>;

export function woodMaterial(): WoodMaterial {
  const uniforms = {
    uBoards: { value: Array.from({ length: MOST_BOARDS }, () => new Vector4()) },
    uCount: { value: 1 },
    uSeed: { value: 0 },
    uEarly: { value: new Color() },
    uLate: { value: new Color() },
    uFigure: { value: new Vector4() },
    uTint: { value: 0 },
  };
  const material = new MeshStandardMaterial({ roughness: 0.62, polygonOffset: true });
  material.polygonOffsetFactor = 1;
  material.polygonOffsetUnits = 1;
  material.onBeforeCompile = (shader) => {
    Object.assign(shader.uniforms as Uniforms, uniforms);
    shader.vertexShader = shader.vertexShader
      .replace('#include <common>', '#include <common>\nvarying vec3 vWood;\nvarying vec3 vWoodNormal;')
      .replace('#include <begin_vertex>', '#include <begin_vertex>\nvWood = position;\nvWoodNormal = normal;');
    shader.fragmentShader = shader.fragmentShader
      .replace('#include <common>', `#include <common>\n${WOOD_HEAD}`)
      .replace('#include <color_fragment>', 'diffuseColor.rgb = woodColor(vWood, normalize(vWoodNormal));')
      .replace('#include <opaque_fragment>', `${WOOD_SHEEN}\n#include <opaque_fragment>`);
  };
  material.customProgramCacheKey = () => 'wood';
  return {
    material,
    set(part, look) {
      part.boards.forEach(({ to, pith, tone }, k) => {
        uniforms.uBoards.value[k]!.set(to, pith[0], pith[1], tone);
      });
      uniforms.uCount.value = part.boards.length;
      // The first board makes the pattern of its part unlike all others.
      const [{ pith, tone }] = part.boards as [ScenePart['boards'][0]];
      uniforms.uSeed.value = 50 + 40 * tone + (Math.abs(pith[0] + pith[1]) % 13);
      uniforms.uEarly.value.copy(colorOf(look.early));
      uniforms.uLate.value.copy(colorOf(look.late));
      uniforms.uFigure.value.set(look.ring, look.contrast, look.pores, look.rays);
    },
    tint(on) {
      uniforms.uTint.value = on ? 1 : 0;
    },
  };
}
