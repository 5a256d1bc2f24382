import { choice, count, division, flag, length } from '../../params/fields.ts';
import { group } from '../../params/spec.ts';
import { SPECIES_IDS } from '../../wood/species-id.ts';

// Ranges keep a value in the world of tables; rules keep values fit for each other. Defaults: the reading-room table.

const PROFILES = ['round-over', 'chamfer', 'square'] as const;

export const TOP_FIELDS = {
  table: group('Table', {
    height: length({ label: 'height over the floor', default: '29 1/2 in', min: '12 in', max: '48 in' }),
  }),
  top: group('Top', {
    length: length({ label: 'length', default: '84 in', min: '16 in', max: '16 ft' }),
    width: length({ label: 'width', default: '40 in', min: '10 in', max: '6 ft' }),
    thickness: length({
      label: 'thickness at the center line',
      default: '2 1/4 in',
      min: '1/2 in',
      max: '5 in',
    }),
    edgeThickness: length({
      label: 'thickness at the long edges',
      default: '1 1/8 in',
      min: '6 mm',
      max: '5 in',
      because: 'under 6 mm an edge chips in use',
      help: 'the same as top.thickness for a flat top',
    }),
    strips: division({
      label: 'strips',
      default: 8,
      min: 2,
      max: 24,
      minWidth: '1 in',
      maxWidth: '16 in',
      help: 'how many equal ones, or a list of widths from the left edge; one that lies across the center line is ripped on it',
    }),
    layers: count({ label: 'layers of boards', default: 1, min: 1, max: 2 }),
    showLayer: length({
      label: 'thickness of the show layer',
      default: '1 1/2 in',
      min: '1/4 in',
      max: '4 in',
      help: 'with two layers: depth of the glue line below the show face',
    }),
    wood: choice({ label: 'wood', options: SPECIES_IDS, default: 'cherry' }),
    showEdge: choice({ label: 'profile of the upper arris', options: PROFILES }),
    showEdgeSize: length({ label: 'size of the upper profile', default: '1/8 in', min: '0.5 mm', max: '1 1/2 in' }),
    undersideEdge: choice({ label: 'profile of the lower arris', options: PROFILES }),
    undersideEdgeSize: length({
      label: 'size of the lower profile',
      default: '1/4 in',
      min: '0.5 mm',
      max: '1 1/2 in',
    }),
  }),
  edgeJoint: group('Edge joints of the top', {
    tenons: flag({ label: 'loose tenons', default: true, help: 'they align the strips; the glue holds them' }),
    gauge: length({
      label: 'show face to the middle of the tenon',
      default: '5/8 in',
      min: '1/8 in',
      max: '3 in',
      help: 'always gauged from the show face, so that the taper never moves a slot',
    }),
    tenonThickness: length({ label: 'tenon thickness', default: '3/8 in', min: '3 mm', max: '1 in' }),
    tenonWidth: length({ label: 'tenon width along the joint', default: '1 1/2 in', min: '8 mm', max: '6 in' }),
    slotDepth: length({ label: 'slot depth in each strip', default: '1 in', min: '5 mm', max: '3 in' }),
    first: length({ label: 'reference end to the first tenon', default: '4 in', min: '1 in', max: '24 in' }),
    spacing: length({ label: 'tenons no further apart than', default: '10 in', min: '2 in', max: '36 in' }),
    endPlay: length({
      label: 'play at each end of the loose slots',
      default: '1/32 in',
      min: 0,
      max: '1/4 in',
      help: 'one side of a joint has tight slots, the other has this play',
    }),
    depthPlay: length({ label: 'slot deeper than the tenon by', default: '1/16 in', min: 0, max: '1/4 in' }),
  }),
};
