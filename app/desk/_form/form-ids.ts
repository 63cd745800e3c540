/** An id as a form carries it. What it names is looked up by the use case, which refuses one that is not there. */
export const idIn = <Id extends string>(form: FormData, name: string): Id => String(form.get(name) ?? '') as Id
