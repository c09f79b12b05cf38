/** The wall of imports. Each rule's comment speaks to the person who ran into it. */
import { rooms, shells } from './tools/walls/rooms.mjs';

const names = rooms.map(([name]) => name);
const tests = '\\.(test|contract)\\.tsx?$';
const pureLibraries = '^(node_modules/)?(zod|canonicalize|@noble/hashes|uuid|pure-rand|d3-scale|d3-shape|d3-array|suncalc)(/|$)';

const upward = names.map((name, index) => ({
  name: `${name}-looks-down`,
  severity: 'error',
  comment:
    `"${name}" may import only the rooms before it (${names.slice(0, index).join(', ') || 'none'}). ` +
    'Hand the thing in as an argument, or move it down to the room that owns it.',
  from: { path: `^src/${name}/`, pathNot: tests },
  to: { path: `^src/(${[...names.slice(index + 1), 'shells', 'apiary'].join('|')})(/|\\.ts)` },
}));

const shellToShell = shells.map((name) => ({
  name: `${name}-keeps-to-itself`,
  severity: 'error',
  comment: 'Shells do not import each other, but server and commands may use disk. What two need belongs in a room or in apiary.',
  from: { path: `^src/shells/${name}/`, pathNot: tests },
  to: {
    path: `^src/shells/(${shells.filter((other) => other !== name && (other !== 'disk' || name === 'web')).join('|')})/`,
  },
}));

export default {
  forbidden: [
    ...upward,
    ...shellToShell,
    {
      name: 'shells-use-the-front-door',
      severity: 'error',
      comment:
        'A shell enters by src/apiary.ts or src/apiary/ (and may use numbers, journal, words, sheets). ' +
        'Ask the front door for what is missing.',
      from: { path: '^src/shells/', pathNot: tests },
      to: { path: '^src/(figures|weather|hive|colony|queens|advice)/', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'rooms-touch-no-world',
      severity: 'error',
      comment: 'A room touches no disk, network, clock or screen: take what you need as an argument.',
      from: { path: `^src/(${names.join('|')}|apiary)(/|\\.ts)`, pathNot: tests },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'rooms-use-pure-libraries',
      severity: 'error',
      comment: 'A room may import only the libraries of docs/decisions/0003: pure, without a world of their own.',
      from: { path: `^src/(${names.join('|')}|apiary)(/|\\.ts)`, pathNot: tests },
      to: { dependencyTypes: ['npm', 'npm-dev', 'npm-no-pkg', 'unknown', 'undetermined'], pathNot: pureLibraries },
    },
    {
      name: 'src-stands-alone',
      severity: 'error',
      comment: 'src never imports checks, tools or a test.',
      from: { path: '^src/', pathNot: tests },
      to: { path: `^(checks|tools)/|${tests}` },
    },
    {
      name: 'no-circles',
      severity: 'error',
      comment: 'Two files that need each other are one idea, or hide a third one that both should use.',
      from: {},
      to: { circular: true },
    },
    {
      name: 'nothing-unresolved',
      severity: 'error',
      comment: 'This import leads nowhere.',
      from: {},
      to: { couldNotResolve: true, pathNot: '\\?|^virtual:|\\.css$' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^build/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.check.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'default'],
      extensions: ['.ts', '.tsx', '.js', '.mjs', '.d.ts', '.css'],
    },
  },
};
