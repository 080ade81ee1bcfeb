/** @module One critical figure to be typed in from the manual. Enter goes on to the next. */
import { memo, useCallback, useState } from 'react';
import type { CriticalFigure } from '../../engine/edit/critical-figures.ts';
import { figureTrouble } from '../../engine/edit/second-check.ts';
import { Field } from '../shell/field.tsx';

export const CheckedFigure = memo(
  ({
    figure,
    typed,
    index,
    onTyped,
    onNext,
    register,
  }: {
    readonly figure: CriticalFigure;
    /** As kept so far. */
    readonly typed: string;
    readonly index: number;
    readonly onTyped: (at: string, text: string) => void;
    readonly onNext: (index: number) => void;
    readonly register: (index: number, input: HTMLInputElement | null) => void;
  }) => {
    const [text, setText] = useState<string>();
    const shown = text ?? typed;
    const trouble = text === undefined && typed !== '' ? figureTrouble(typed, figure.kind) : undefined;
    const inputRef = useCallback(
      (input: HTMLInputElement | null) => register(index, input),
      [register, index],
    );
    const leave = () => {
      if (text === undefined) return;
      onTyped(figure.at, text.trim());
      setText(undefined);
    };
    return (
      <Field
        label={figure.title}
        value={shown}
        onChange={setText}
        onLeave={leave}
        onEnter={() => {
          leave();
          onNext(index);
        }}
        inputRef={inputRef}
        wrong={trouble}
        {...(figure.source === undefined ? {} : { hint: figure.source })}
      />
    );
  },
);
