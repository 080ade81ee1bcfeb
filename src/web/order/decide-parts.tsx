/** @module The sheets of deciding: the plan, what is ordered, what the machine shop is told, what has come. */
import { Link } from 'wouter';
import type { OpenJob } from '../../job/job.ts';
import { openLines } from '../../job/order/open-lines.ts';
import { orderListOf } from '../../job/order/order-list.ts';
import { useJob } from '../journal/use-desk.tsx';
import { addressOf } from '../shell/phases.ts';

const decideParts = [
  { slug: '', name: 'Plan' },
  { slug: 'orders', name: 'Orders' },
  { slug: 'machine-shop', name: 'Machine shop' },
  { slug: 'receiving', name: 'Receiving' },
] as const;

const counted = (count: number, words: string): string => (count === 0 ? '' : `${count} ${words}`);

/** How each stands, in few words. */
const saysOf = (job: OpenJob, slug: string): string => {
  switch (slug) {
    case 'orders': {
      const left = orderListOf(job).filter(({ lines }) => lines.some((line) => line.left > 0));
      return counted(left.length, 'to place') || counted(job.orders.size, 'placed') || 'nothing yet';
    }
    case 'machine-shop':
      return 'what to machine';
    case 'receiving': {
      const open = openLines(job);
      const failed = open.filter(({ standing }) => standing.kind === 'failed').length;
      if (failed > 0) return `${failed} not as ordered`;
      return (
        counted(open.length, 'to come or check') || (job.orders.size > 0 ? '✓ all is in' : 'nothing yet')
      );
    }
    default:
      return job.agreed ? '✓ agreed' : 'what is done, at what cost';
  }
};

export const DecideParts = ({ at }: { readonly at: string }) => {
  const job = useJob();
  return (
    <nav className="phases parts no-print" aria-label="Sheets of deciding">
      {decideParts.map(({ slug, name }) => (
        <Link
          key={name}
          href={`${addressOf(job.head.event?.job ?? '', 'decide')}${slug === '' ? '' : `/${slug}`}`}
          aria-current={slug === at ? 'page' : undefined}
        >
          {name}
          <span className="state">{saysOf(job, slug)}</span>
        </Link>
      ))}
    </nav>
  );
};
