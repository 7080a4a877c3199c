/** Id of the thing that a passage leads through: passages are called after it, with a count behind. */
export function passageOwner({ name }: { readonly name: string }): string {
  return name.split(' ')[0] ?? ''
}
