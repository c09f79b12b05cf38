/**
 * The house rules that a program can check, one function a rule: it takes a file and returns what is
 * wrong with it, in words for the person who wrote it. Style that needs judgement is in docs/style.md.
 */
export interface SourceFile {
  /** Path from the top of the tree, with slashes. */
  readonly path: string;
  readonly text: string;
}

export interface Fault {
  readonly path: string;
  readonly line: number;
  readonly what: string;
}

export type TidyRule = (file: SourceFile) => readonly Fault[];

const code = /\.(ts|tsx|mjs)$/;
const longestLine = 140;
const longestFile = 400;
const catchAlls = /(^|\/)(utils?|helpers?|common|misc|manager|shared)\.(ts|tsx)$/;

/** Words that must not stand in the tree, each with what to do instead. Written in parts, so that this file may stand in it. */
const banned: readonly { readonly word: RegExp; readonly instead: string }[] = [
  {
    word: new RegExp(`\\b(${['TO', 'DO'].join('')}|${['FIX', 'ME'].join('')}|${['HA', 'CK'].join('')}|XX${'X'})\\b`),
    instead: 'do it now, or say plainly in docs what is missing',
  },
  { word: new RegExp(`\\b(describe|it|test|suite)\\.(${'on'}ly|${'sk'}ip)\\(`), instead: 'no test is left out' },
  { word: new RegExp(`@ts-(${'ig'}nore|${'no'}check)`), instead: 'mend the type' },
  { word: new RegExp(`(${'/wo'}rk/|${'/ro'}ot/|${'/ho'}me/)`), instead: 'no path of a machine' },
];

export const rules: readonly TidyRule[] = [
  longLines,
  longFiles,
  catchAllNames,
  bannedWords,
  opening,
  defaultExports,
  classesInRooms,
];

function longLines(file: SourceFile): readonly Fault[] {
  if (!code.test(file.path)) return [];
  return each(file, (line) => line.length > longestLine, `a line is at most ${longestLine} characters long`);
}

function longFiles(file: SourceFile): readonly Fault[] {
  const lines = file.text.split('\n').length;
  if (!code.test(file.path) || lines <= longestFile) return [];
  return [{ path: file.path, line: lines, what: `${lines} lines: one file, one idea; part it (at most ${longestFile})` }];
}

function catchAllNames(file: SourceFile): readonly Fault[] {
  return catchAlls.test(file.path) ? [{ path: file.path, line: 1, what: 'name the file after its one idea' }] : [];
}

function bannedWords(file: SourceFile): readonly Fault[] {
  if (file.path.endsWith('package-lock.json')) return [];
  return banned.flatMap(({ word, instead }) => each(file, (line) => word.test(line), instead));
}

/** A source file opens with what it is. */
function opening(file: SourceFile): readonly Fault[] {
  if (!/^(src|tools|checks)\/.*\.(ts|tsx|mjs)$/.test(file.path) || /\.d\.ts$/.test(file.path)) return [];
  const start = file.text.replace(/^#!.*\n/, '');
  return /^\/(\*\*|\/)/.test(start)
    ? []
    : [{ path: file.path, line: 1, what: 'open the file with a comment: what it is, what it leaves out' }];
}

function defaultExports(file: SourceFile): readonly Fault[] {
  if (!/^src\//.test(file.path)) return [];
  return each(file, (line) => /^export default\b/.test(line), 'export by name');
}

const room = /^src\/(numbers|figures|journal|weather|hive|colony|queens|advice|words|sheets|apiary)\//;

function classesInRooms(file: SourceFile): readonly Fault[] {
  if (!room.test(file.path)) return [];
  return each(file, (line) => /^(export )?(abstract )?class \w/.test(line), 'rooms have records and functions, no classes');
}

function each(file: SourceFile, wrong: (line: string) => boolean, what: string): readonly Fault[] {
  return file.text.split('\n').flatMap((line, index) => (wrong(line) ? [{ path: file.path, line: index + 1, what }] : []));
}
