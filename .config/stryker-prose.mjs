const prose = ['title', 'question', 'computes', 'limits', 'sources', 'strength', 'unpublished', 'caution', 'example'];

/**
 * Leaves alone what a check says of itself: words for people, and examples that `tests/catalogue.test.ts` runs as whole
 * files. Found by the shape of the code, a property of a constant of type `Check`; what a finding says is not left alone.
 */
const ignorer = {
  shouldIgnore({ node, parentPath }) {
    if (node.type !== 'ObjectProperty' || !prose.includes(node.key.name)) return undefined;
    const declared = parentPath.parentPath?.node;
    const isCheck =
      declared?.type === 'VariableDeclarator' && declared.id.typeAnnotation?.typeAnnotation.typeName?.name === 'Check';
    return isCheck ? 'what a check says of itself, not what it computes' : undefined;
  },
};

export const strykerPlugins = [{ kind: 'Ignore', name: 'prose', value: ignorer }];
