import ts from 'typescript'

/** The first paragraph of a doc comment on one line; nothing where there is no comment. */
export function plainComment(node: ts.Node): string | undefined {
  const [comment] = ts.getJSDocCommentsAndTags(node).filter(ts.isJSDoc)
  const text = typeof comment?.comment === 'string' ? comment.comment : ts.getTextOfJSDocComment(comment?.comment)
  const [paragraph = ''] = (text ?? '').split(/\n\s*\n/)
  const plain = paragraph.replace(/\s+/g, ' ').trim()
  return plain === '' ? undefined : plain
}
