import { expect, it } from 'vitest';
import * as api from '../lib/index.ts';

it('offers these names to designs and scripts', () => {
  expect(Object.keys(api).sort().join(' ')).toMatchInlineSnapshot(`"OUTPUTS SPECIES SPECIES_IDS bearer bill board buildFiles choice composition count cutList defineDesign defineParams defineShop describeParams division edgeJoint flag foot formatInches formatLength formatMm group heightAt length lengths looseTenon looseTenonJoint makeJob pad parseLength plainJoint post quantity rail readDesign readValues renderIssues runChecks screwFixing seasonalTravel sectionAlong shapesOf speciesById stretcher strip surfaceToOuter tenonStations text top trestleParams trestleTable wedge within"`);
});
