/** A drawing from the sheets, put on the screen as it is: the same string that paper and tests get. */

interface DrawnProps {
  /** SVG made by `src/sheets`, which escapes every name in it. */
  readonly svg: string;
  readonly className?: string;
}

export function Drawn({ svg, className = 'drawn' }: DrawnProps) {
  return <div className={className} dangerouslySetInnerHTML={{ __html: svg }} />;
}
