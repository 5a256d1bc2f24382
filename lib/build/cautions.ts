import { formatMass } from '../units/format-load.ts';
import type { Caution } from '../writers/findings-html.ts';
import { derivedNumbers } from './derived.ts';
import type { Job } from './job.ts';

/** What findings are, and what they are not: stands wherever they are shown. */
export const ADVICE: Caution = {
  title: 'What these findings are',
  text:
    'Advice from simple models and average clear wood. They are no certificate and no load rating. The law, ' +
    'standards and licensed engineers come first; a piece for the public, a school or a contract needs a real test.',
};

/** What the papers warn of besides the findings: the limits of the checks, and what happens in shop and use. */
export function cautions(job: Job): readonly Caution[] {
  const say = (kg: number, rounding?: 'up'): string => formatMass(kg, job.design.units, rounding);
  return [
    ADVICE,
    {
      title: 'What they leave out',
      text:
        'Standing or jumping on the piece, drops, dragging it loaded, damp rooms, aquaria and machines on it; knots, ' +
        'cracks, sloping grain and glue that failed.',
    },
    {
      title: 'Children',
      text: 'A child who climbs on an edge, or hangs from it, can tip a table over. Say so to whoever takes it home.',
    },
    { title: 'Tipping', text: tipping(job) },
    {
      title: 'Wood moves',
      text:
        'Across the grain a top grows and shrinks with the seasons. Keep the screw slots free of glue, and fix nothing ' +
        'rigid across the grain. Measure the moisture of the wood before it is cut.',
    },
    {
      title: 'Oily rags and dust',
      text:
        'Rags with oil finish heat up by themselves and can catch fire: spread them flat outdoors, or keep them under ' +
        'water in a can with a lid. Take dust off where it is made, and wear a respirator.',
    },
    {
      title: 'Tapered stock',
      text:
        'A piece without parallel faces rocks and can bind on the saw: carry it on a sled or jig that holds it, with ' +
        'the riving knife in its place.',
    },
    {
      title: 'Lifting',
      text:
        `The piece weighs about ${say(derivedNumbers(job).mass, 'up')}. Two people together lift about two thirds of what they lift one by one, three ` +
        'about half, and less on steps and slopes. For more, carry the top by itself, slide it on edge, or use a trolley.',
    },
    {
      title: 'Proof by the maker',
      text:
        `Before it leaves the shop: load the top with ${say(100)}, spread out; rock it; push level at the top with the force ` +
        `of ${say(30)}. Look for gaps in the joints. Tighten the screws again after a week.`,
    },
  ];
}

/** Refers to the checks on tipping when there are any. */
function tipping({ findings }: Job): string {
  const known = findings.some(({ check }) => check.startsWith('tipping'));
  return known
    ? 'The findings on tipping say how much weight at an edge lifts the far feet. Write it on the drawing, and tell the customer.'
    : 'Find out how much weight at an edge lifts the far feet, write it on the drawing, and tell the customer.';
}
