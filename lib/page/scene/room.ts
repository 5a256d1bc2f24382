import {
  BufferGeometry,
  Group,
  LineBasicMaterial,
  LineLoop,
  Mesh,
  MeshBasicMaterial,
  MeshStandardMaterial,
  PlaneGeometry,
  Vector3,
} from 'three';
import type { SceneData, SceneSeat } from '../../derive/scene/scene-data.ts';
import { around, type Box } from './box.ts';
import { CHAIR_BOX, chair, seated, standing } from './figure.ts';

/** What stands around the piece: places, chairs, people. Plain, so that nobody takes them for an offer. */
export interface Room {
  readonly group: Group;
  update(data: SceneData): void;
  show(what: { readonly seats: boolean; readonly people: boolean }): void;
  /** What is shown, for a view to take in. */
  boxes(): readonly Box[];
  dispose(): void;
}

/** mm that the front of a chair reaches under the table, and that a place stays off edge and neighbor. */
const UNDER = 60;
const CLEAR = 25;
/** mm from the end of the piece to the person who stands beside it. */
const BESIDE = 420;

export function makeRoom(): Room {
  const group = new Group();
  const [seats, people] = [new Group(), new Group()];
  group.add(seats, people);
  const plain = new MeshStandardMaterial({ color: '#d3cdc3', roughness: 0.9 });
  const skin = new MeshStandardMaterial({ color: '#aab2b8', roughness: 0.85 });
  const mat = new MeshBasicMaterial({ color: '#ffffff', transparent: true, opacity: 0.28, depthWrite: false });
  const ink = new LineBasicMaterial({ color: '#ffffff', transparent: true, opacity: 0.85 });
  let waiting: SceneData | undefined;
  let boxes: { seats: readonly Box[]; people: readonly Box[] } = { seats: [], people: [] };

  const clear = (): void => {
    for (const part of [seats, people]) {
      part.traverse((child) => {
        if (child instanceof Mesh || child instanceof LineLoop) child.geometry.dispose();
      });
      part.clear();
    }
  };
  const solid = (geometry: BufferGeometry, material: MeshStandardMaterial): Mesh => {
    const mesh = new Mesh(geometry, material);
    mesh.castShadow = true;
    mesh.receiveShadow = true;
    return mesh;
  };
  const build = (data: SceneData): void => {
    waiting = undefined;
    clear();
    for (const seat of data.seats) {
      seats.add(place(seat, mat, ink), standAt(solid(chair(seat.seatHeight), plain), seat));
    }
    const sitter = data.seats.find(({ facing }) => facing[1] < 0) ?? data.seats[0];
    if (sitter) people.add(standAt(solid(seated(sitter.seatHeight, sitter.tableHeight), skin), sitter));
    const { min, max } = data.bounds;
    const person = solid(standing(), skin);
    const [x, y] = [min[0] - BESIDE, (min[1] + max[1]) / 2 + 0.2 * (max[1] - min[1])];
    person.position.set(x, y, min[2]);
    person.rotation.z = -Math.PI / 2 - 0.35;
    people.add(person);
    boxes = {
      seats: data.seats.map(chairBox),
      people: [
        { min: [x - 180, y - 260, 0], max: [x + 180, y + 260, 1705] },
        ...(sitter ? [tall(chairBox(sitter), sitter.seatHeight + 910)] : []),
      ],
    };
  };
  // Nobody is put into a room that nobody looks into.
  const settle = (): void => {
    if (waiting && (seats.visible || people.visible)) build(waiting);
  };
  return {
    group,
    update(data) {
      waiting = data;
      settle();
    },
    show(what) {
      seats.visible = what.seats;
      people.visible = what.people;
      settle();
    },
    boxes: () => [...(seats.visible ? boxes.seats : []), ...(people.visible ? boxes.people : [])],
    dispose() {
      clear();
      for (const material of [plain, skin, mat, ink]) material.dispose();
    },
  };
}

/** Turns a thing that looks along y toward the table, its front a little under the edge. */
function standAt(mesh: Mesh, { at, facing }: SceneSeat): Mesh {
  mesh.position.set(at[0] + facing[0] * UNDER, at[1] + facing[1] * UNDER, 0);
  mesh.rotation.z = Math.atan2(-facing[0], facing[1]);
  return mesh;
}

/** The stretch of the top that is somebody's own. */
function place(seat: SceneSeat, material: MeshBasicMaterial, ink: LineBasicMaterial): Group {
  const [wide, deep] = [seat.width - 2 * CLEAR, seat.depth - CLEAR];
  const group = new Group();
  group.add(new Mesh(new PlaneGeometry(wide, deep), material));
  const corners = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([x, y]) => new Vector3((x! * wide) / 2, (y! * deep) / 2, 0));
  group.add(new LineLoop(new BufferGeometry().setFromPoints(corners), ink));
  const inward = CLEAR + deep / 2;
  group.position.set(
    seat.at[0] + seat.facing[0] * inward,
    seat.at[1] + seat.facing[1] * inward,
    seat.tableHeight + 1.5,
  );
  group.rotation.z = Math.atan2(-seat.facing[0], seat.facing[1]);
  return group;
}

function chairBox({ at, facing, seatHeight }: SceneSeat): Box {
  const { half, behind, above } = CHAIR_BOX;
  const back = UNDER - behind;
  const corner = (along: number, side: number, z: number): Box => {
    const p = [at[0] + facing[0] * along - facing[1] * side, at[1] + facing[1] * along + facing[0] * side, z] as const;
    return { min: p, max: p };
  };
  return around([corner(back, -half, 0), corner(back, half, seatHeight + above), corner(UNDER, half, 0)]);
}

const tall = ({ min, max }: Box, height: number): Box => ({ min, max: [max[0], max[1], Math.max(max[2], height)] });
