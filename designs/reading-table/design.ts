import { defineDesign, trestleParams, trestleTable } from 'tablewright';

/** A reading-room table for a village library: six readers, black cherry, wedge-section top on two bearer frames. */
export default defineDesign({
  title: 'Reading-room table',
  number: '12',
  revision: 'A',
  date: '2026-11-25',
  units: 'in',
  params: trestleParams,
  compose: trestleTable,
  sheets: { owner: 'the workshop', finish: 'hardwax oil, 2 coats, satin' },
  site: {
    room: { length: '17 ft', width: '11 ft' },
    route: {
      corridor: '48 in',
      corridorAfter: '42 in',
      doorWidth: '36 in',
      doorHeight: '80 in',
      ceiling: '8 ft',
    },
    seating: { places: 6, wheelchair: true },
  },
  lumber: { leastWidth: '3 1/2 in' },
  values: {
    table: { height: '29 1/2 in' },
    top: {
      length: '84 in',
      width: '40 in',
      thickness: '2 1/4 in',
      edgeThickness: '1 1/8 in',
      strips: 8,
      wood: 'cherry',
      showEdge: 'round-over',
      showEdgeSize: '1/8 in',
      undersideEdge: 'round-over',
      undersideEdgeSize: '1/4 in',
    },
    frame: { kind: 'bearer', inset: '14 in', wood: 'cherry' },
    post: { thickness: '2 3/4 in', width: '3 1/4 in', spacing: '20 in' },
    bearer: { length: '30 in', thickness: '2 1/4 in', depth: '3 1/2 in' },
    foot: { length: '30 in', height: '3 in' },
    stretcher: { count: 1, to: 'rail', height: '16 in' },
  },
});
