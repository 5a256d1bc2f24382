import type { PartKind } from '../../model/part.ts';

/** The parameters that give a kind of piece its thickness and its width, in the words of the tables there are. */
export const THICKNESS_LEVERS: { readonly [K in PartKind]: readonly string[] } = {
  top: ['top.thickness'],
  strip: ['top.thickness', 'top.showLayer'],
  post: ['post.thickness', 'post.width'],
  panelLeg: ['panelLeg.thickness'],
  stave: ['panelLeg.thickness'],
  bearer: ['bearer.thickness'],
  cleat: ['cleat.thickness'],
  foot: ['foot.thickness'],
  rail: ['lowerRail.thickness', 'upperRail.thickness'],
  stretcher: ['stretcher.thickness'],
  seat: ['seat.thickness'],
  side: ['side.thickness'],
  looseTenon: [],
  pad: [],
};

export const WIDTH_LEVERS: { readonly [K in PartKind]: readonly string[] } = {
  top: ['top.width'],
  strip: ['top.width'],
  post: ['post.width'],
  panelLeg: ['panelLeg.width'],
  stave: ['panelLeg.staves', 'panelLeg.width'],
  bearer: ['bearer.depth', 'bearer.length'],
  cleat: ['cleat.depth'],
  foot: ['foot.height'],
  rail: ['lowerRail.depth', 'upperRail.depth'],
  stretcher: ['stretcher.depth'],
  seat: ['seat.width'],
  side: ['side.width'],
  looseTenon: [],
  pad: [],
};
