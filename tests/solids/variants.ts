import type { Assembly } from '../../lib/model/assembly.ts';
import { type Changes, DESIGN_NAMES, type DesignName, jobOf } from '../written.ts';

/** A design with some of its parameters changed, so that every way of building a part comes up. */
export interface Variant {
  readonly name: string;
  readonly design: DesignName;
  readonly changes: Changes;
}

const ODD: readonly Variant[] = [
  {
    name: 'bearers, two layers, 7 strips, no relief, chamfers, no stretcher',
    design: 'reading-table',
    changes: {
      'top.strips': '7',
      'top.layers': '2',
      'top.showLayer': '1 1/4 in',
      'top.showEdge': 'chamfer',
      'top.undersideEdge': 'chamfer',
      'bearer.reliefDepth': '0 in',
      'stretcher.count': '0',
      'edgeJoint.spacing': '20 in',
    },
  },
  {
    name: 'bearers, flat top with square edges, a list of strips, no tenons, two stretchers between rails',
    design: 'reading-table',
    changes: {
      'top.edgeThickness': '2 1/4 in',
      'top.strips': '9 in, 8 in, 11 in, 12 in',
      'top.showEdge': 'square',
      'top.undersideEdge': 'square',
      'edgeJoint.tenons': 'no',
      'stretcher.count': '2',
      'foot.archRise': '0 in',
      'bearer.endRound': '0 in',
      'fixing.perSide': '1',
    },
  },
  {
    name: 'posts, no relief, round-overs, no lower rail',
    design: 'meeting-table',
    changes: {
      'top.strips': '5',
      'top.showEdge': 'round-over',
      'top.undersideEdge': 'round-over',
      'bearer.reliefDepth': '0 mm',
      'lowerRail.use': 'no',
      'edgeJoint.spacing': '600 mm',
    },
  },
  {
    name: 'posts, two layers, one stretcher between rails',
    design: 'meeting-table',
    changes: {
      'top.strips': '6',
      'top.layers': '2',
      'top.showLayer': '25 mm',
      'stretcher.count': '1',
      'stretcher.to': 'rail',
      'edgeJoint.spacing': '600 mm',
    },
  },
  {
    name: 'panel legs, two stretchers, one stave, no relief',
    design: 'study-table',
    changes: {
      'top.strips': '3',
      'top.layers': '1',
      'top.showEdge': 'round-over',
      'bearer.reliefDepth': '0 in',
      'stretcher.count': '2',
      'panelLeg.staves': '1',
    },
  },
  {
    name: 'bearers, screws of which only the outer ones are sunk',
    design: 'meeting-table',
    changes: {
      'frame.kind': 'bearer',
      'bearer.length': '860 mm',
      'fixing.fromEnds': '45 mm',
      'fixing.screwLength': '110 mm',
    },
  },
];

/** The designs as they are, and odd ones. */
export const VARIANTS: readonly Variant[] = [
  ...DESIGN_NAMES.map((design): Variant => ({ name: design, design, changes: {} })),
  ...ODD,
];

export const assemblyOf = ({ design, changes }: Variant): Assembly => jobOf(design, changes).assembly;
