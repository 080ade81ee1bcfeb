/** @module Engine types on the shelf: which version, who typed the figures in and who checked them. */
import { useMemo } from 'react';
import { Link } from 'wouter';
import { readEngineType } from '../../engine/read-engine-type.ts';
import { type EngineTypeListed, useEngineTypes } from '../jobs/workshop-lists.ts';
import { Fetched } from '../shell/fetched.tsx';
import { Sheet } from '../shell/sheet.tsx';
import './engine-type.css';
import { NewType } from './new-type.tsx';
import { typeAddress } from './type-address.ts';

const TypeRow = ({ type }: { readonly type: EngineTypeListed }) => {
  const { engine } = useMemo(() => readEngineType(type.text), [type.text]);
  return (
    <tr>
      <th scope="row">
        <Link className="button" href={typeAddress(type.id)}>
          {type.title}
        </Link>
      </th>
      <td className="number figure">{type.version}</td>
      <td>{engine?.source ?? 'cannot be read'}</td>
      <td>{engine?.entered ? `${engine.entered.by}, ${engine.entered.on}` : 'not said'}</td>
      <td>
        {engine?.checked
          ? `✓ ${engine.checked.by}, ${engine.checked.on}`
          : (engine?.differs.length ?? 0) > 0
            ? `✕ ${engine?.differs.length} read differently`
            : 'nobody yet'}
      </td>
    </tr>
  );
};

const TypesScreen = () => {
  const types = useEngineTypes();
  return (
    <Sheet heading="Engine types">
      <h1>Engine types</h1>
      <p>
        The limits of the maker’s manual, typed in once and checked by a second person. A job keeps the
        version that it began with.
      </p>
      <Fetched query={types} what="the shelf" />
      {types.data === undefined ? null : types.data.length === 0 ? (
        <p>The shelf is empty. Begin the first engine type, or put a file on it.</p>
      ) : (
        <section className="scroll" aria-label="List of engine types">
          <table>
            <thead>
              <tr>
                <th scope="col">engine type</th>
                <th scope="col" className="number">
                  version
                </th>
                <th scope="col">limits from</th>
                <th scope="col">typed in by</th>
                <th scope="col">checked by</th>
              </tr>
            </thead>
            <tbody>
              {types.data.map((type) => (
                <TypeRow key={type.id} type={type} />
              ))}
            </tbody>
          </table>
        </section>
      )}
      {types.data === undefined ? null : <NewType shelf={types.data} />}
    </Sheet>
  );
};

export default TypesScreen;
