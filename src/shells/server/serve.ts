/**
 * `festoon serve`: starts the server, says where it is, and ends it on a signal. What it prints is
 * all that it prints: the address, the folder, and for other devices the pairing code.
 */
import { issueText } from '../../words/issue-text.ts';
import { text } from '../../words/text.ts';
import { namesForOthers } from './own-names.ts';
import { type ServerOptions, startServer } from './start-server.ts';

export interface ServeOptions<D> extends Omit<ServerOptions<D>, 'port' | 'host' | 'dataDir' | 'showCode' | 'trouble'> {
  /** Absent: PORT, then 4180. */
  readonly port?: number;
  /** Absent: HOST, then 127.0.0.1. */
  readonly host?: string;
  /** Absent: FESTOON_DATA, then ./yard-data. */
  readonly dataDir?: string;
  readonly say?: (line: string) => void;
}

export interface Serving {
  readonly url: string;
  readonly close: () => Promise<void>;
}

/** Rejects with an error whose message is the one line to print when it cannot start. */
export async function serve<D>(options: ServeOptions<D>): Promise<Serving> {
  const say = options.say ?? ((line: string) => console.log(line));
  const dataDir = options.dataDir ?? (process.env['FESTOON_DATA'] || './yard-data');
  const sayCode = (code: string): void => say(text('serve.code', { code: `${code.slice(0, 4)} ${code.slice(4)}` }));
  const started = await startServer({
    ...options,
    port: options.port ?? portFrom(process.env['PORT']),
    host: options.host ?? (process.env['HOST'] || '127.0.0.1'),
    dataDir,
    showCode: (code) => {
      if (started.ok && started.value.code() !== null) sayCode(code);
    },
    trouble: (error) => console.error(error),
  });
  if (!started.ok) throw new Error(started.issues.map((issue) => issueText(issue)).join('\n'));
  const running = started.value;
  say(text('serve.at', { url: running.url }));
  say(text('serve.kept', { folder: dataDir }));
  const code = running.code();
  if (code !== null) {
    const { protocol } = new URL(running.url);
    const names = namesForOthers(options.host ?? (process.env['HOST'] || ''));
    const urls = names.map((name) => `${protocol}//${name}:${running.port}`);
    if (urls.length > 0) say(text('serve.others', { urls: urls.join(', ') }));
    sayCode(code);
  }
  const close = closing(running.close);
  return { url: running.url, close };
}

/** Ends once, by call or by signal; a second signal does not wait. */
function closing(end: () => Promise<void>): () => Promise<void> {
  let ended: Promise<void> | null = null;
  const onSignal = (): void => {
    if (ended !== null) process.exit(1);
    void close().then(() => process.exit(0));
  };
  const close = (): Promise<void> => {
    ended ??= end().finally(() => {
      process.off('SIGINT', onSignal);
      process.off('SIGTERM', onSignal);
    });
    return ended;
  };
  process.on('SIGINT', onSignal);
  process.on('SIGTERM', onSignal);
  return close;
}

/** Throws the one line to print for what is no port. */
function portFrom(given: string | undefined): number {
  if (given === undefined || given === '') return 4180;
  const port = Number(given);
  if (!Number.isInteger(port) || port < 0 || port > 65535) throw new Error(text('command.bad-port', { found: given }));
  return port;
}
