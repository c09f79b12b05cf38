/** Sentences for faults of what came from outside; every code without its own sentence uses `issue.other`. */
export const issues = {
  'issue.other': '{where}: {found}; {expected}.',
  'issue.at-entry': '{where} of entry {entry}',
  'issue.whole': 'the whole input',
} as const;
