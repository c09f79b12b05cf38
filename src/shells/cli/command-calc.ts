/**
 * `festoon calc`: one sum. Its answer is one JSON object on standard output and nothing else; bad input
 * gives nothing there, one line a fault on standard error, and exit code 2.
 */
import { readFileSync } from 'node:fs';
import { runSum, sums } from '../../apiary/sums.ts';
import { printedBook } from '../../apiary/handbook.ts';
import { text } from '../../words/text.ts';
import { sumPage } from '../../words/sum-page.ts';
import { type Command, type ExitCode, flag, type Out } from './command.ts';
import { complainAll } from './complain.ts';
import { table } from './table.ts';

export const calcCommand: Command = {
  name: 'calc',
  usage: '[NAME [\'{"field": value}\' | -]]',
  line: 'command.calc',
  help: ['command.calc-help'],
  options: {},
  run: async (call) => {
    const [name, given] = call.words;
    if (name === undefined) {
      for (const line of table(sums.map((sum) => [sum.key, sum.line]))) call.out.print(line);
      return 0;
    }
    const sum = sums.find((known) => known.key === name);
    if (sum === undefined) {
      call.out.complain(text('command.no-sum', { name, known: sums.map((known) => known.key).join(', ') }));
      return 2;
    }
    if (flag(call, 'help')) {
      for (const line of sumPage(sum, printedBook)) call.out.print(line);
      return 0;
    }
    if (given === undefined) {
      call.out.complain(text('command.calc-no-input', { name }));
      return 2;
    }
    return answer(name, given === '-' ? readFileSync(0, 'utf8') : given, call.out);
  },
};

function answer(name: string, json: string, out: Out): ExitCode {
  let input: unknown;
  try {
    input = JSON.parse(json);
  } catch (thrown) {
    out.complain(text('command.not-json', { why: (thrown as Error).message }));
    return 2;
  }
  const result = runSum(name, input, printedBook);
  if (!result.ok) {
    complainAll(out, result.issues);
    return 2;
  }
  out.print(JSON.stringify(result.value));
  return 0;
}
