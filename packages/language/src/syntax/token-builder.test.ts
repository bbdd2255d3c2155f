import { DefaultTokenBuilder, EmptyFileSystem } from 'langium';
import { expect, test } from 'vitest';
import { createBoothServices } from '../module.js';
import { BoothTokenBuilder } from './token-builder.js';

test('the tokens are those of the library, each with the same longer ones', () => {
  const { Grammar } = createBoothServices({ ...EmptyFileSystem }).booth;
  const shownBy = (builder: DefaultTokenBuilder) => {
    const tokens = builder.buildTokens(Grammar);
    if (!Array.isArray(tokens)) throw new Error('The tokens are not a list.');
    return tokens.map(({ name, LONGER_ALT: longer }) => ({
      name,
      longer: [longer ?? []].flat().map((token) => token.name),
    }));
  };
  const own = shownBy(new BoothTokenBuilder());
  expect(own).toEqual(shownBy(new DefaultTokenBuilder()));
  expect(own.find(({ name }) => name === 'desk')?.longer).toContain('ID');
});
