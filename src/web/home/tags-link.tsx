/** @module The ways to tags and labels from a sheet; what is scanned there is shown on the sheet of tags. */
import { Link, useLocation } from 'wouter';
import { useJob } from '../journal/use-desk.tsx';
import { addressOfLabels, addressOfTags, type ScannedElsewhere } from './tags-address.ts';
import { useScanner } from './use-scanner.ts';

export const TagsLink = () => {
  const job = useJob();
  const [, go] = useLocation();
  useScanner((scanned) => go(addressOfTags(job), { state: { scanned } satisfies ScannedElsewhere }));
  return (
    <nav className="row no-print" aria-label="Tags of parts">
      <Link className="button" href={addressOfTags(job)}>
        Tags
      </Link>
      <Link className="button" href={addressOfLabels(job)}>
        Labels
      </Link>
    </nav>
  );
};
