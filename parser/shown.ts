/** What is shown of work: the words in which it was told where it has them, else its name. */
export const shownOf = ({ wording, task }: { wording?: string | null; task: string }): string => wording ?? task;
