import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export interface AuditedDim {
  readonly block: string;
  /** 0 linear, 1 aligned, 2 two-line angular, 3 diameter, 4 radius. */
  readonly type: number;
  readonly layer: string;
  readonly style: string;
  readonly text: string;
  /** Group 42: radians for an angle. */
  readonly actual: number;
  /** What the reader measures from the definition points: degrees for an angle. */
  readonly measurement: number;
  readonly textAt: readonly [number, number];
  readonly blockKinds: readonly string[];
  readonly blockTexts: readonly string[];
}

/** A run of straight lines and arcs; the bulge of a point belongs to the side that leaves it. */
export interface AuditedPolyline {
  readonly layer: string;
  readonly closed: boolean;
  readonly points: readonly (readonly [x: number, y: number, bulge: number])[];
}

export interface AuditReport {
  readonly version: string;
  readonly errors: readonly string[];
  readonly fixes: readonly string[];
  readonly header: Readonly<Record<string, number>>;
  readonly layers: readonly {
    readonly name: string;
    readonly color: number;
    readonly linetype: string;
    readonly lineweight: number;
  }[];
  readonly linetypes: readonly string[];
  readonly kinds: readonly string[];
  readonly texts: readonly string[];
  readonly polylines: readonly AuditedPolyline[];
  readonly dims: readonly AuditedDim[];
}

/** Debian packages ezdxf for its own Python, not for one that may come first on the path. */
const PYTHON = '/usr/bin/python3';
const SCRIPT = fileURLToPath(new URL('dxf-audit.py', import.meta.url));
const NOT_INSTALLED = 3;

/** What ezdxf (Debian's `python3-ezdxf`) says of some files, or nothing when it is not installed here. */
export function auditDxfs(texts: readonly string[]): readonly AuditReport[] | undefined {
  const run = spawnSync(PYTHON, [SCRIPT], { input: JSON.stringify(texts), encoding: 'utf8', maxBuffer: 1 << 28 });
  if (run.error || run.status === NOT_INSTALLED) return undefined;
  if (run.status !== 0) throw new Error(`the reader stopped with code ${run.status}: ${run.stderr}`);
  return JSON.parse(run.stdout) as AuditReport[];
}

/** What ezdxf says of one file. */
export const auditDxf = (text: string): AuditReport | undefined => auditDxfs([text])?.[0];
