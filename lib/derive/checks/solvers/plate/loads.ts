import { positive } from '../../../../wood/in-range.ts';
import { weightOf } from '../mass.ts';
import type { AssembledPlate } from './assemble.ts';
import { elementAt } from './element-at.ts';
import { type ElementLoads, elementLoads, push } from './element-loads.ts';
import { addOnPoints, addOverArea } from './loads-spread.ts';
import type { PlateLoad } from './plate.ts';

/**
 * Forces and moments on the nodes that do the same work as the loads, N and N mm, three a node; 0 where a support holds.
 *
 * @throws RangeError when a load or a part of it lies beside the plate.
 */
export function nodeLoads(assembled: AssembledPlate, loads: readonly PlateLoad[]): Float64Array {
  const gathered = elementLoads(assembled.mesh);
  for (const load of loads) addLoad(assembled, load, gathered);
  for (const way of assembled.held) gathered.all[way] = 0;
  return gathered.all;
}

function addLoad(assembled: AssembledPlate, load: PlateLoad, gathered: ElementLoads): void {
  if (load.kind === 'point') {
    push(gathered, elementAt(assembled.mesh.grid, load.at), load.force);
  } else if (load.kind === 'own weight') {
    const perVolume = weightOf(positive('density', load.density, ' kg/m³')) * KG_PER_M3;
    addOnPoints(assembled, (thickness) => perVolume * thickness, gathered);
  } else if (load.over) {
    addOverArea(load.pressure, load.over, gathered);
  } else {
    addOnPoints(assembled, () => load.pressure, gathered);
  }
}

/** kg/mm³ in one kg/m³. */
const KG_PER_M3 = 1e-9;
