/** Texts of the screens, all but the visit's own: they stand in files by where the keeper meets them. */
import { booksTexts } from './screens-books.ts';
import { colonyTexts } from './screens-colony.ts';
import { entryTexts } from './screens-entries.ts';
import { foreseenTexts } from './screens-foreseen.ts';
import { frameTexts } from './screens-frame.ts';
import { paperTexts } from './screens-paper.ts';
import { recordTexts } from './screens-record.ts';
import { settingsTexts } from './screens-settings.ts';

export const screens = {
  ...frameTexts,
  ...colonyTexts,
  ...foreseenTexts,
  ...paperTexts,
  ...recordTexts,
  ...booksTexts,
  ...entryTexts,
  ...settingsTexts,
} as const;
