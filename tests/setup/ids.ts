/** A made-up id, or one read from an address or a row, of the type that its place asks for. */
export const asId = <Id extends string>(text: string): Id => text as Id
