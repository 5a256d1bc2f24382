import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const CHROMIUM = '/usr/bin/chromium';

export const hasBrowser: boolean = existsSync(CHROMIUM);

/** Pictures come from a renderer in software; nothing is looked up in the network. */
const FLAGS = [
  '--no-sandbox',
  '--use-gl=angle',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Debian's Chromium without a window; undefined where there is none. */
export async function launchBrowser(): Promise<Browser | undefined> {
  return hasBrowser ? chromium.launch({ executablePath: CHROMIUM, args: FLAGS }) : undefined;
}
