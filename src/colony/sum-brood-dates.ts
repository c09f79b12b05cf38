/** The sum "brood-dates". */
import { choiceOf, dayOf } from '../figures/read-input.ts';
import { sum } from '../figures/sum.ts';
import { good } from '../numbers/result.ts';
import { broodDates, broodStages, castes } from './brood-dates.ts';

const moments = ['egg', 'larva', 'sealed', 'emerging', 'sealing'] as const;

export const broodDatesSum = sum({
  key: 'brood-dates',
  title: 'Dates of brood',
  line: 'when a cell was laid, sealed and will be empty, from the stage seen on a day',
  formula:
    'laid = seenOn − greatest age … seenOn − least age of the stage; sealed and emerges = laid + ages at sealing and at emerging, ' +
    'earliest with the least and latest with the greatest',
  fields: [
    { kind: 'choice', name: 'caste', choices: castes, about: 'what will come out of the cell' },
    { kind: 'choice', name: 'stage', choices: broodStages, about: 'what is in the cell' },
    { kind: 'day', name: 'seenOn', about: 'day on which it was seen' },
  ],
  uses: castes.flatMap((caste) => moments.map((moment) => `${caste}-${moment}-age` as const)),
  usesFor: (given) => {
    const caste = choiceOf(given, 'caste', castes);
    return [`${caste}-${choiceOf(given, 'stage', broodStages)}-age`, `${caste}-sealing-age`, `${caste}-emerging-age`];
  },
  answer: (given, book) => {
    const { laid, sealed, emerges } = broodDates(
      choiceOf(given, 'caste', castes),
      choiceOf(given, 'stage', broodStages),
      dayOf(given, 'seenOn'),
      book,
    );
    return good({
      laidEarliest: laid.earliest,
      laidLatest: laid.latest,
      sealedEarliest: sealed.earliest,
      sealedLatest: sealed.latest,
      emergesEarliest: emerges.earliest,
      emergesLatest: emerges.latest,
    });
  },
});
