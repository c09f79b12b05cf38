/** The sheet of one act: it says what will be written before it is kept, because these change what everything else means. */
import type { ColonyView } from '../../../colony/view.ts';
import { useText } from '../frame/manner.tsx';
import { Sheet } from '../frame/sheet.tsx';
import { EndedForm, MeasuredForm, MovedForm, UnitedForm } from './act-forms.tsx';
import { RequeenedForm, SplitForm } from './act-forms-queen.tsx';
import type { ColonyAct } from './acts.ts';

interface ActSheetProps {
  readonly act: ColonyAct;
  readonly view: ColonyView;
  readonly onClose: () => void;
}

const forms = {
  requeened: RequeenedForm,
  split: SplitForm,
  united: UnitedForm,
  moved: MovedForm,
  ended: EndedForm,
  measured: MeasuredForm,
} as const;

export function ActSheet({ act, view, onClose }: ActSheetProps) {
  const { t } = useText();
  const Form = forms[act];
  return (
    <Sheet title={t('act-form.title', { act: t(`act-form.${act}`), name: view.name })} onClose={onClose}>
      <Form view={view} onDone={onClose} />
    </Sheet>
  );
}
