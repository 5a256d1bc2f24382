import { expect, it } from 'vitest';
import * as api from '../lib/index.ts';

it('offers these names to designs and scripts', () => {
  expect(Object.keys(api).sort().join(' ')).toMatchInlineSnapshot(
    `"FULL_WORK IssuesError OUTPUTS SPECIES SPECIES_IDS VERDICTS bearer bill billTable board buildFiles chartOf chartSvg checksText choice composition count cutList cutListTable defineDesign defineParams defineShop derivedNumbers describeParams division drawTogether edgeJoint findingNumbers flag foot formatInches formatLength formatMm group groupByBasis heightAt jobFiles length lengths likeText looseTenon looseTenonJoint lumberData lumberPlan lumberReport makeJob milledData milledPlan milledReport noWoodWords pad paperPlan parseLength plainJoint post quantity rail readDesign readMilled readRecords readShop readSources readValues readVariations renderIssues runChecks screwFixing seasonalTravel sectionAlong shapesOf speciesById stretcher strip surfaceToOuter tableText tenonStations text top trestleParams trestleTable valueAt warningOf wedge whatIf whatIfData whatIfTable within"`,
  );
});
