import type { SpeciesId } from '../../wood/species-id.ts';
import type { Rgb, WoodLook } from './scene-data.ts';

const look = (
  early: Rgb,
  late: Rgb,
  [ring, contrast, pores, rays]: readonly [number, number, number, number],
): WoodLook => ({ early, late, ring, contrast, pores, rays });

/** Heartwood under oil. Colors and figures are from memory, our convention: to tell woods apart, not to choose by. */
const LOOKS: { readonly [Id in SpeciesId]: WoodLook } = {
  beech: look([226, 192, 154], [203, 161, 120], [3.2, 0.35, 0.1, 0.7]),
  cherry: look([198, 133, 88], [164, 98, 60], [4, 0.5, 0.12, 0.15]),
  'douglas-fir': look([224, 172, 116], [174, 104, 58], [3, 0.95, 0, 0]),
  elm: look([190, 148, 104], [146, 105, 68], [3.6, 0.8, 0.7, 0.1]),
  hickory: look([205, 165, 120], [164, 119, 78], [2.8, 0.65, 0.6, 0.05]),
  mahogany: look([168, 98, 62], [138, 74, 46], [4.5, 0.35, 0.45, 0.1]),
  'red-maple': look([224, 190, 152], [199, 156, 116], [3.4, 0.35, 0.04, 0.15]),
  'red-oak': look([208, 164, 120], [168, 120, 82], [3, 0.75, 0.95, 0.6]),
  'sugar-maple': look([233, 206, 170], [211, 174, 134], [3.2, 0.3, 0.03, 0.2]),
  teak: look([178, 128, 76], [136, 90, 50], [3.4, 0.55, 0.45, 0.05]),
  walnut: look([126, 88, 62], [88, 58, 40], [4.2, 0.55, 0.5, 0.05]),
  'white-ash': look([228, 202, 164], [190, 156, 114], [3.4, 0.75, 0.8, 0.05]),
  'white-oak': look([204, 170, 126], [168, 130, 90], [2.8, 0.65, 0.85, 0.8]),
  'yellow-birch': look([222, 184, 140], [194, 150, 108], [3.4, 0.35, 0.08, 0.05]),
  'yellow-poplar': look([214, 196, 146], [184, 164, 112], [4.5, 0.4, 0.04, 0.05]),
};

export const woodLook = (wood: SpeciesId): WoodLook => LOOKS[wood];
