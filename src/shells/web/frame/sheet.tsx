/** A slip of paper laid over the screen: the browser's own dialog, so that focus and Escape behave. */
import { type ReactNode, useEffect, useId, useRef } from 'react';
import { useText } from './manner.tsx';

interface SheetProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

export function Sheet({ title, onClose, children }: SheetProps) {
  const { t } = useText();
  const id = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    return () => shown?.close();
  }, []);
  return (
    <dialog ref={dialog} aria-labelledby={id} onCancel={onClose} onClose={onClose}>
      <div className="title">
        <h2 id={id} className="sheet-title">
          {title}
        </h2>
        <button type="button" className="plain" onClick={onClose}>
          {t('frame.close')}
        </button>
      </div>
      {children}
    </dialog>
  );
}
