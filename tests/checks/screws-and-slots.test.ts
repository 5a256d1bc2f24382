import { expect, it } from 'vitest';
import meeting from '../../designs/meeting-table/design.ts';
import { checkContext } from '../../lib/build/job.ts';
import { screwsAndSlots } from '../../lib/derive/checks/screws-and-slots.ts';
import { readValues } from '../../lib/params/read-values.ts';
import { defineShop } from '../../lib/shop/shop.ts';

/** The meeting table with its first edge tenon at a distance from the end: the second one then stands under a screw, or not. */
function found(first: string) {
  const override = { path: 'edgeJoint.first', text: first, from: '--set' };
  const values = readValues(meeting.params, meeting.values, [override]).values!;
  return screwsAndSlots.run(checkContext(meeting, values, meeting.compose(values, meeting.title), defineShop()));
}

it('tells of a screw that runs into a slot: stations 100 and 375 mm, screws at 380 mm from the end', () => {
  const [finding] = found('100 mm');
  expect(finding).toMatchObject({ verdict: 'change it', part: 'top' });
  expect(finding!.because).toBe(
    'top T: cut a-fixing-1 runs 3 mm into slot joint-6-2 in strip T5; 3 mm of wood is wanted between them',
  );
  expect(finding!.fixes.length).toBeGreaterThan(0);
});

it('is content when the nearest slot stands 412.5 mm from the end', () => {
  const [finding] = found('150 mm');
  expect(finding).toMatchObject({ verdict: 'ok', limit: 3 });
  expect(finding!.value).toBeGreaterThan(3);
});
