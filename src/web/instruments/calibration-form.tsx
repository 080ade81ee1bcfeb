/** @module Notes a certificate: its day, when it is due, how the instrument was found, and the correction it gives. */
import { useState } from 'react';
import { kindOf } from '../../engine/instrument-kind.ts';
import type { Instrument } from '../../measure/instrument.ts';
import { answer } from '../../quantity/refusal.ts';
import { Choice, Field } from '../shell/field.tsx';
import { Asking } from './asking.tsx';
import { typedIfAny } from './typed-figure.ts';

const day = 'written like 2026-03-02';

export const CalibrationForm = ({ instrument }: { readonly instrument: Instrument }) => {
  const [certificate, setCertificate] = useState('');
  const [on, setOn] = useState('');
  const [due, setDue] = useState('');
  const [found, setFound] = useState('good');
  const [correction, setCorrection] = useState('');
  const [uncertainty, setUncertainty] = useState('');
  const [note, setNote] = useState('');
  const { unit } = instrument.resolution;
  const { measures } = kindOf(instrument.kind);
  const clear = () => {
    for (const set of [setCertificate, setOn, setDue, setCorrection, setUncertainty, setNote]) set('');
    setFound('good');
  };
  return (
    <Asking
      name="Note a calibration"
      does="Note the calibration"
      said={`${instrument.name}: calibration noted.`}
      onDone={clear}
      request={() => {
        const corrected = typedIfAny(correction, unit, measures, 'Correction');
        if (corrected.kind === 'refused') return corrected;
        const known = typedIfAny(uncertainty, unit, measures, 'Uncertainty of the correction');
        if (known.kind === 'refused') return known;
        return answer({
          kind: 'calibrate instrument',
          name: instrument.name,
          certificate,
          on: on.trim(),
          due: due.trim(),
          foundGood: found === 'good',
          ...(corrected.value && { correction: corrected.value }),
          ...(known.value && { uncertainty: known.value }),
          note,
        });
      }}
    >
      <div className="row" style={{ alignItems: 'start' }}>
        <Field className="grow" label="Certificate" value={certificate} onChange={setCertificate} />
        <Field className="grow" label="Calibrated on" value={on} onChange={setOn} hint={day} />
        <Field className="grow" label="Due on" value={due} onChange={setDue} hint={day} />
      </div>
      <Choice
        label="It was found"
        value={found}
        onChange={setFound}
        of={[
          { value: 'good', words: 'good, before anything was set right' },
          { value: 'bad', words: 'out of tolerance' },
        ]}
      />
      <div className="row" style={{ alignItems: 'start' }}>
        <Field
          className="grow"
          label="Correction"
          value={correction}
          onChange={setCorrection}
          hint={`to be added to what it shows, in ${unit}; may be left empty`}
        />
        <Field
          className="grow"
          label="Uncertainty of the correction"
          value={uncertainty}
          onChange={setUncertainty}
          hint="expanded, k = 2, as the certificate gives it"
        />
        <Field className="grow" label="Note" value={note} onChange={setNote} />
      </div>
    </Asking>
  );
};
