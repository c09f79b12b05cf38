/**
 * `festoon COMMAND …`: finds the command, reads its options, runs it and gives back its exit code.
 * What each command does is in its own file; nothing here knows bees.
 */
import { parseArgs } from 'node:util';
import { text } from '../../words/text.ts';
import type { Command, ExitCode, Out, Serve } from './command.ts';
import { commands } from './list.ts';
import { table } from './table.ts';

export interface World {
  readonly serve: Serve;
  readonly out: Out;
}

const help = { help: { type: 'boolean', short: 'h' } } as const;

export async function main(argv: readonly string[], world: World): Promise<ExitCode> {
  const [name, ...rest] = argv;
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    overview(world.out);
    return name === undefined ? 2 : 0;
  }
  const command = commands.find((known) => known.name === name);
  if (command === undefined) {
    world.out.complain(text('command.unknown', { name, known: commands.map((known) => known.name).join(', ') }));
    return 2;
  }
  return run(command, rest, world);
}

async function run(command: Command, rest: readonly string[], world: World): Promise<ExitCode> {
  const options = { ...command.options, ...help };
  let parsed: ReturnType<typeof parseArgs>;
  try {
    parsed = parseArgs({ args: [...rest], options, allowPositionals: true, strict: true });
  } catch (thrown) {
    world.out.complain(text('command.bad-option', { name: command.name, why: (thrown as Error).message }));
    return 2;
  }
  const values = parsed.values as Record<string, string | boolean | undefined>;
  if (values['help'] === true && !(command.name === 'calc' && parsed.positionals.length > 0)) {
    describe(command, world.out);
    return 0;
  }
  return command.run({ words: parsed.positionals, options: values, out: world.out, serve: world.serve });
}

function overview(out: Out): void {
  out.print(text('command.overview'));
  out.print('');
  const rows = commands.map((command) => [`  ${command.name} ${command.usage}`.trimEnd(), text(command.line)]);
  for (const line of table(rows)) out.print(line);
  out.print('');
  for (const key of ['command.where', 'command.codes', 'command.more'] as const) out.print(text(key));
}

function describe(command: Command, out: Out): void {
  out.print(`festoon ${command.name} ${command.usage}`.trimEnd());
  out.print(text(command.line));
  for (const key of command.help) out.print(`\n${text(key)}`);
  const named = Object.keys(command.options);
  if (named.length > 0) out.print(`\n${text('command.options', { options: named.map((each) => `--${each}`).join(' ') })}`);
}
