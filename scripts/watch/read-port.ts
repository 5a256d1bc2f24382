import type { Complaint } from '../report/complaint.ts';

const LEAST = 1024;
const MOST = 65535;

/** The port to serve at; 0, which takes any that is free, when none was asked for. */
export function readPort(given: string | undefined): number | Complaint {
  if (given === undefined) return 0;
  const port = /^\d{1,5}$/.test(given) ? Number(given) : Number.NaN;
  if (port >= LEAST && port <= MOST) return port;
  const options = [`a whole number from ${LEAST} to ${MOST}`];
  return { code: 'not-a-choice', given, subject: '--port', options, try: '--port 8123' };
}
