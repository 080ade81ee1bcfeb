/** @module The offers of a job: the one that counts, and behind it those before. */
import { useJob } from '../journal/use-desk.tsx';
import { Aside } from '../shell/aside.tsx';
import { OfferShown } from './offer-shown.tsx';

export const Offers = () => {
  const { offers } = useJob();
  const [last, ...before] = offers.toReversed();
  if (last === undefined) return null;
  return (
    <>
      <OfferShown key={last.number} offer={last} />
      {before.length === 0 ? null : (
        <Aside words={`${before.length} ${before.length === 1 ? 'offer' : 'offers'} before it`}>
          {before.map((offer) => (
            <OfferShown key={offer.number} offer={offer} />
          ))}
        </Aside>
      )}
    </>
  );
};
