import { defineDesign, trestleParams, trestleTable } from 'tablewright';

/** A study table for two: walnut, two layers of boards in the top, wide glued-up legs. */
export default defineDesign({
  title: 'Study table on panel legs',
  number: '14',
  revision: 'A',
  date: '2026-11-25',
  units: 'in',
  params: trestleParams,
  compose: trestleTable,
  values: {
    table: { height: '29 in' },
    top: {
      length: '66 in',
      width: '30 in',
      thickness: '2 in',
      edgeThickness: '1 in',
      strips: 6,
      layers: 2,
      showLayer: '1 1/4 in',
      wood: 'walnut',
      showEdge: 'square',
      undersideEdge: 'chamfer',
      undersideEdgeSize: '3/8 in',
    },
    edgeJoint: { gauge: '9/16 in', tenonThickness: '1/4 in', slotDepth: '3/4 in', first: '3 in', spacing: '12 in' },
    frame: { kind: 'panel', inset: '9 in', wood: 'walnut' },
    panelLeg: { width: '28 in', thickness: '1 3/4 in', staves: 5 },
    cleat: { length: '20 in', thickness: '1 3/4 in', depth: '2 3/4 in' },
    stretcher: { count: 1, thickness: '1 1/2 in', depth: '4 in', height: '12 in' },
    pad: { fromEnds: '3/4 in' },
    frameJoint: { tenonDepth: '1 1/4 in', railTenonWidth: '2 1/2 in' },
    fixing: { perSide: 2, fromEnds: '1 1/2 in', screwLength: '2 1/4 in', penetration: '7/8 in' },
  },
});
