/** @module What the machine shop is told: each place from measured to finished, and on what terms; and its paper. */
import { type MachinedPart, machineShopSheetsOf } from '../../job/order/machine-shop.ts';
import { inwardText } from '../../quantity/inward.ts';
import { comesOffText, knownText, machineShopPage, termsOf } from '../../record/machine-shop-page.ts';
import { useJob } from '../journal/use-desk.tsx';
import { ThreeAnswers } from '../shell/three-answers.tsx';
import { PaperShown } from './paper-shown.tsx';

const Part = ({ part }: { readonly part: MachinedPart }) => {
  const { line, characteristic, finished, places, machining } = part;
  return (
    <>
      <h3>{line.says}</h3>
      <p>
        {characteristic.title} finished to <strong className="figure">{inwardText(finished.mm, 'mm')}</strong>
        , that is <strong className="figure">{inwardText(finished.in, 'in')}</strong>, rounded inwards.
      </p>
      <section className="scroll" aria-label={`Places of ${line.says}`}>
        <table>
          <thead>
            <tr>
              <th scope="col">Place</th>
              <th scope="col">Measured least, mm</th>
              <th scope="col">Measured greatest, mm</th>
              <th scope="col">Comes off the diameter</th>
            </tr>
          </thead>
          <tbody>
            {places.map((place) => (
              <tr key={place.place}>
                <th scope="row">{place.title}</th>
                <td className="figure">{place.from ? knownText(place.from.least) : 'not measured'}</td>
                <td className="figure">{place.from ? knownText(place.from.greatest) : ''}</td>
                <td className="figure">{comesOffText(place)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <ul>
        {termsOf(machining).map(({ name, says }) => (
          <li key={`${name} ${says}`}>
            {name}: {says}
          </li>
        ))}
      </ul>
    </>
  );
};

export const MachineShopSheetShown = () => {
  const job = useJob();
  const sheets = machineShopSheetsOf(job);
  const unread = sheets
    .flatMap(({ parts }) => parts.flatMap(({ places }) => places))
    .filter(({ from }) => from === undefined).length;
  return (
    <>
      <ThreeAnswers
        where="what goes to the machine shop"
        now={
          sheets.length === 0
            ? 'nothing: no plan that machines is chosen'
            : 'print it and send it with the part'
        }
        right={
          sheets.length === 0
            ? 'nothing to say'
            : unread > 0
              ? `${unread} places were not measured`
              : 'every place is measured'
        }
      />
      {sheets.map((sheet) => (
        <section key={sheet.supplier} className="part" aria-label={sheet.supplier}>
          <h2>{sheet.supplier}</h2>
          {sheet.parts.map((part) => (
            <Part key={part.line.line} part={part} />
          ))}
          <PaperShown title={`Instruction for ${sheet.supplier}`} html={machineShopPage(job, [sheet])} />
        </section>
      ))}
    </>
  );
};
