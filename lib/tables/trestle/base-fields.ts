import { choice, count, flag, length } from '../../params/fields.ts';
import { group } from '../../params/spec.ts';
import { SPECIES_IDS } from '../../wood/species-id.ts';

export const BASE_FIELDS = {
  frame: group('Leg frames', {
    kind: choice({
      label: 'kind of frame',
      options: ['bearer', 'posts', 'panel'],
      help: 'bearer: foot, two posts and a V-topped bearer; posts: two posts scribed to the underside, with rails; panel: a wide glued-up leg with a cleat',
    }),
    inset: length({ label: 'end of the top to the middle of the frame', default: '14 in', min: '1 in', max: '7 ft' }),
    wood: choice({ label: 'wood of the base', options: SPECIES_IDS, default: 'cherry' }),
  }),
  post: group('Posts', {
    thickness: length({ label: 'thickness along the table', default: '2 3/4 in', min: '3/4 in', max: '8 in' }),
    width: length({ label: 'width across the table', default: '3 1/4 in', min: '1 in', max: '12 in' }),
    spacing: length({ label: 'middle to middle of the two posts', default: '20 in', min: '3 in', max: '5 ft' }),
  }),
  bearer: group('Bearer', {
    length: length({ label: 'length', default: '30 in', min: '6 in', max: '6 ft' }),
    thickness: length({ label: 'thickness along the table', default: '2 1/4 in', min: '3/4 in', max: '8 in' }),
    depth: length({ label: 'depth at its ends', default: '3 1/2 in', min: '1 in', max: '10 in' }),
    endRound: length({ label: 'radius of its lower corners', default: '1 in', min: 0, max: '8 in' }),
    reliefDepth: length({
      label: 'depth of the relief at the ridge',
      default: '1/32 in',
      min: 0,
      max: '1/4 in',
      help: 'room so that the bearer never rides on the ridge; 0 for none. Also for cleats and upper rails',
    }),
    reliefWidth: length({ label: 'width of the relief at the ridge', default: '1 in', min: '1/8 in', max: '4 in' }),
  }),
  foot: group('Foot', {
    length: length({ label: 'length', default: '30 in', min: '6 in', max: '6 ft' }),
    thickness: length({ label: 'thickness along the table', default: '2 1/4 in', min: '3/4 in', max: '8 in' }),
    height: length({ label: 'upper edge over the floor, pads included', default: '3 in', min: '1 in', max: '12 in' }),
    archRise: length({ label: 'rise of the hollow below', default: '1/2 in', min: 0, max: '4 in' }),
  }),
  upperRail: group('Upper rail (frames of posts)', {
    thickness: length({ label: 'thickness along the table', default: '1 3/4 in', min: '1/2 in', max: '6 in' }),
    depth: length({ label: 'depth at its ends', default: '4 in', min: '1 in', max: '12 in' }),
  }),
  lowerRail: group('Lower rail (from post to post)', {
    use: flag({ label: 'a lower rail in each frame', default: true }),
    thickness: length({ label: 'thickness along the table', default: '2 3/4 in', min: '1/2 in', max: '6 in' }),
    depth: length({ label: 'depth', default: '5 in', min: '1 in', max: '12 in' }),
  }),
  stretcher: group('Stretchers', {
    count: count({ label: 'stretchers', default: 1, min: 0, max: 2 }),
    to: choice({ label: 'they meet', options: ['rail', 'posts'], help: 'panel legs are met in any case' }),
    thickness: length({ label: 'thickness', default: '1 1/2 in', min: '1/2 in', max: '6 in' }),
    depth: length({ label: 'depth', default: '5 in', min: '1 in', max: '12 in' }),
    height: length({ label: 'middle over the floor', default: '16 in', min: '1 in', max: '4 ft' }),
    spacing: length({
      label: 'middle to middle of two stretchers',
      default: '10 in',
      min: '1 in',
      max: '5 ft',
      help: 'between rails or panel legs; stretchers between posts follow the posts',
    }),
  }),
  panelLeg: group('Panel legs', {
    width: length({ label: 'width across the table', default: '24 in', min: '6 in', max: '5 ft' }),
    thickness: length({ label: 'thickness along the table', default: '1 3/4 in', min: '3/4 in', max: '6 in' }),
    staves: count({ label: 'staves', default: 5, min: 1, max: 16 }),
  }),
  cleat: group('Cleat (panel legs)', {
    length: length({ label: 'length', default: '22 in', min: '4 in', max: '5 ft' }),
    thickness: length({ label: 'thickness along the table', default: '1 3/4 in', min: '3/4 in', max: '4 in' }),
    depth: length({ label: 'depth at its ends', default: '3 in', min: '1 in', max: '8 in' }),
  }),
  pad: group('Pads', {
    length: length({ label: 'length across the table', default: '3 in', min: '1/2 in', max: '12 in' }),
    thickness: length({ label: 'thickness', default: '1/4 in', min: '1 mm', max: '2 in' }),
    fromEnds: length({
      label: 'end of the foot to the pad',
      default: '1 in',
      min: 0,
      max: '12 in',
      help: 'also panel legs; under a post the pad stands in the middle',
    }),
  }),
};
