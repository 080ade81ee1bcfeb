/** @module Every stand-alone sum, to be found by its name and what it gives; no job is needed. */
import { useState } from 'react';
import { Link } from 'wouter';
import { reckonings } from '../../reckon/list.ts';
import { Field } from '../shell/field.tsx';
import { Sheet } from '../shell/sheet.tsx';
import { sumAddress } from './reckoner-address.ts';

const ReckonerScreen = () => {
  const [sought, setSought] = useState('');
  const words = sought.toLowerCase().split(/\s+/).filter(Boolean);
  const found = reckonings.filter(({ name, title }) =>
    words.every((word) => `${name} ${title}`.toLowerCase().includes(word)),
  );
  return (
    <Sheet heading="Reckoner">
      <h1>Reckoner</h1>
      <p>
        Each sum by itself, with its formula, its source and a picture drawn to what you type. The maker’s
        manual overrules them all.
      </p>
      <Field
        label="Find a sum"
        value={sought}
        onChange={setSought}
        hint="a word of its name or of what it gives"
      />
      {found.length === 0 ? (
        <p role="status">No sum has these words. Take one away.</p>
      ) : (
        <section className="scroll" aria-label="Sums">
          <table>
            <thead>
              <tr>
                <th scope="col">sum</th>
                <th scope="col">what it gives</th>
              </tr>
            </thead>
            <tbody>
              {found.map(({ name, title }) => (
                <tr key={name}>
                  <th scope="row">
                    <Link className="button" style={{ whiteSpace: 'nowrap' }} href={sumAddress(name)}>
                      {name}
                    </Link>
                  </th>
                  <td>{title}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
    </Sheet>
  );
};

export default ReckonerScreen;
