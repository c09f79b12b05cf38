/** `festoon serve` and `festoon demo`: the server with the screens, on this machine unless told otherwise. */
import { fileURLToPath } from 'node:url';
import { text } from '../../words/text.ts';
import { type Call, type Command, type ExitCode, option } from './command.ts';
import { dataDir } from './source.ts';

const usualPort = 4180;
const highestPort = 65535;

const options = {
  port: { type: 'string' },
  host: { type: 'string' },
  cert: { type: 'string' },
  key: { type: 'string' },
} as const;

export const serveCommand: Command = {
  name: 'serve',
  usage: '[--port N] [--host H] [--cert FILE --key FILE]',
  line: 'command.serve',
  help: ['command.serve-help'],
  options,
  run: (call) => start(call, null),
};

export const demoCommand: Command = {
  name: 'demo',
  usage: '[--port N]',
  line: 'command.demo',
  help: ['command.demo-help'],
  options,
  run: (call) => start(call, '/demo'),
};

async function start(call: Call, page: string | null): Promise<ExitCode> {
  const asked = option(call, 'port') ?? process.env['PORT'] ?? String(usualPort);
  const port = Number(asked);
  if (!Number.isInteger(port) || port < 0 || port > highestPort) {
    call.out.complain(text('command.bad-port', { found: asked }));
    return 2;
  }
  const cert = option(call, 'cert');
  const key = option(call, 'key');
  if ((cert === null) !== (key === null)) {
    call.out.complain(text('command.cert-and-key'));
    return 2;
  }
  const started = await call.serve({
    host: option(call, 'host') ?? process.env['HOST'] ?? '127.0.0.1',
    port,
    dataDir: dataDir(),
    staticDir: fileURLToPath(new URL('../../../web', import.meta.url)),
    ...(cert === null || key === null ? {} : { cert, key }),
  });
  if (!started.ok) {
    call.out.complain(started.line);
    return 1;
  }
  if (page !== null) call.out.print(text('command.demo-at', { url: `${started.line}${page}` }));
  return 0;
}
