import { OUTPUTS } from 'tablewright';
import { nearMiss } from '../../lib/params/near-miss.ts';
import type { Options } from '../line/options.ts';
import type { Complaint } from '../report/complaint.ts';

/** The names behind `--only` that no output has. */
export function unknownOutputs({ only = [] }: Options): Complaint[] {
  const options = OUTPUTS.map(({ name }) => name);
  return only
    .filter((name) => !options.includes(name))
    .map((given) => ({
      code: 'not-a-choice',
      given,
      subject: '--only',
      options,
      didYouMean: nearMiss(given, options),
    }));
}
