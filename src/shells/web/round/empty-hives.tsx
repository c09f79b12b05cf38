/** The hives in which no colony lives: they stand in the yard too. */
import { useText } from '../frame/manner.tsx';
import { useYard } from '../model/use-yard.tsx';

export function EmptyHives() {
  const { t } = useText();
  const { picture } = useYard();
  const empty = (picture?.hives ?? []).filter((hive) => hive.colonies.length === 0);
  if (empty.length === 0) return null;
  return (
    <p className="soft">{t('round.empty-hives', { count: empty.length, names: empty.map((hive) => hive.name).join(', ') })}</p>
  );
}
