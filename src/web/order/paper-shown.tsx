/** @module A paper that goes out of the shop, as it prints. */
import { useRef } from 'react';
import { Button } from 'react-aria-components';

export const PaperShown = ({ title, html }: { readonly title: string; readonly html: string }) => {
  const frame = useRef<HTMLIFrameElement>(null);
  return (
    <details>
      <summary>{title}, as it prints</summary>
      <div className="row no-print">
        <Button onPress={() => frame.current?.contentWindow?.print()}>Print it</Button>
      </div>
      <iframe ref={frame} className="record" title={title} srcDoc={html} />
    </details>
  );
};
