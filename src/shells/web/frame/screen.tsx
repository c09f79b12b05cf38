/** One screen inside the frame: its heading takes the focus when the keeper comes to it, and names the window. */
import { type ReactNode, useEffect, useRef } from 'react';

interface ScreenProps {
  readonly title: string;
  /** Beside the title, in a softer voice. */
  readonly aside?: ReactNode;
  /** False for a screen that stands beside another one and must not take the focus. */
  readonly takesFocus?: boolean;
  readonly children: ReactNode;
}

export function Screen({ title, aside, takesFocus = true, children }: ScreenProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (!takesFocus) return;
    document.title = `${title} · Festoon`;
    heading.current?.focus({ preventScroll: true });
    window.scrollTo(0, 0);
  }, [title, takesFocus]);
  return (
    <div className="screen">
      <div className="title">
        <h1 ref={heading} tabIndex={-1}>
          {title}
        </h1>
        {aside === undefined ? null : <p className="soft">{aside}</p>}
      </div>
      {children}
    </div>
  );
}
