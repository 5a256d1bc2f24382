import { choice, count, length, quantity } from '../../params/fields.ts';
import { group } from '../../params/spec.ts';

export const MAKING_FIELDS = {
  frameJoint: group('Frame joints', {
    tenonThickness: length({ label: 'tenon thickness', default: '1/2 in', min: '5 mm', max: '1 1/2 in' }),
    tenonDepth: length({ label: 'mortise depth in each part', default: '1 1/2 in', min: '10 mm', max: '4 in' }),
    postTenonWidth: length({
      label: 'tenon width, post to foot and bearer',
      default: '1 3/4 in',
      min: '10 mm',
      max: '6 in',
    }),
    railTenonWidth: length({
      label: 'tenon width, rails and stretchers',
      default: '2 3/4 in',
      min: '10 mm',
      max: '8 in',
    }),
    endPlay: length({ label: 'play at each end of the loose mortises', default: '1/64 in', min: 0, max: '1/8 in' }),
    depthPlay: length({ label: 'mortise deeper than the tenon by', default: '1/16 in', min: 0, max: '1/4 in' }),
  }),
  fixing: group('Fixing of the top', {
    perSide: count({ label: 'screws on each side of the center one', default: 2, min: 1, max: 6 }),
    fromEnds: length({ label: 'end of the bearer to the last screw', default: '2 in', min: '1/2 in', max: '12 in' }),
    gauge: choice({ label: 'screw gauge', options: ['8', '10', '12', '14'], default: '10' }),
    screwLength: length({ label: 'screw length', default: '2 1/2 in', min: '3/4 in', max: '6 in' }),
    penetration: length({ label: 'thread in the top', default: '1 in', min: '1/4 in', max: '3 in' }),
    washer: length({ label: 'washer diameter', default: '1/2 in', min: '5 mm', max: '2 in' }),
    slotMargin: length({ label: 'length added to each slot', default: '1/16 in', min: 0, max: '1/2 in' }),
  }),
  moisture: group('Moisture', {
    fitting: quantity({ label: 'when the top is fixed', unit: '%', default: 7.5, min: 3, max: 20 }),
    low: quantity({ label: 'driest in service', unit: '%', default: 5, min: 3, max: 20 }),
    high: quantity({ label: 'dampest in service', unit: '%', default: 11, min: 3, max: 20 }),
    sawn: choice({ label: 'boards of the top are sawn', options: ['flat', 'quarter'] }),
  }),
  allowance: group('Rough sizes', {
    cleanUp: length({
      label: 'added to the thickness of boards that are glued up',
      default: '1/16 in',
      min: 0,
      max: '1 in',
      help: 'planed or sanded off after gluing',
    }),
    thickness: length({ label: 'added to the thickness of other pieces', default: 0, min: 0, max: '1 in' }),
    width: length({ label: 'added to the width', default: '3/16 in', min: 0, max: '2 in' }),
    length: length({ label: 'added to the length', default: '2 in', min: 0, max: '12 in' }),
  }),
  supplies: group('Glue and finish', {
    glueSpread: length({ label: 'glue on one face', default: '0.007 in', min: '0.05 mm', max: '1 mm' }),
    coats: count({ label: 'coats of finish', default: 2, min: 0, max: 12 }),
    coverage: quantity({ label: 'a liter covers in one coat', unit: 'm2', default: 24, min: 2, max: 60 }),
    spare: quantity({ label: 'spare finish', unit: '%', default: 15, min: 0, max: 100 }),
  }),
};
