/** Runs the score from the command line. */
import { score } from './score.ts';

const { code, out, complaint } = score(process.argv.slice(2));
if (out !== '') console.log(out);
if (complaint !== '') console.error(complaint);
process.exitCode = code;
