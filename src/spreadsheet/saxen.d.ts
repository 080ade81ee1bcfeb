/** @module What is used of saxen, which comes without types. */
declare module 'saxen' {
  export class Parser {
    on(
      event: 'openTag',
      call: (
        name: string,
        attributes: () => Readonly<Record<string, string>>,
        decode: (text: string) => string,
      ) => void,
    ): this;
    on(event: 'closeTag', call: (name: string) => void): this;
    on(event: 'text', call: (text: string, decode: (text: string) => string) => void): this;
    on(event: 'cdata', call: (text: string) => void): this;
    on(event: 'error', call: (error: Error) => void): this;
    parse(xml: string): Error | undefined;
  }
}
