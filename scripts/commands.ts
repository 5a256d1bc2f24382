import type { Command } from './command.ts';
import { build } from './commands/build.ts';
import { check } from './commands/check.ts';
import { list } from './commands/list.ts';
import { lists } from './commands/lists.ts';
import { lumber } from './commands/lumber.ts';
import { params } from './commands/params.ts';
import { watch } from './commands/watch.ts';

/** The table of commands, in the order of the help. */
export const COMMANDS: readonly Command[] = [list, params, check, lists, lumber, build, watch];
