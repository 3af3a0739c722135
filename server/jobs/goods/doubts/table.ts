/** Written by tests/learn/orderDoubts.ts: a sign that a line of the order is still to buy, and hundredths for it. */
export const ORDER_DOUBTS = `
count few	9
count many	-19
count none	-10
count one	9
days 0	29
days 0 times 1	16
days 0 times 2	10
days 0 times 3	8
days 1	24
days 1 times 1	24
days 1 times 2	-6
days 2	20
days 2 times 1	11
days 2 times 2	9
days 3	-16
days 3 times 2	-9
days 4	-26
days 4 times 1	-25
days 5	-40
days 5 times 1	-48
days 5 times 2	13
head known false	-33
head known true	14
known 0 of 1	-6
known 0 of 2	-17
known 1 of 1	-25
known 1 of 2	9
known 2 of 2	13
known 2 of 3	11
known 3 of 3	23
known 4 of 3	7
known 5 of 3	-20
notes 0	56
notes 1	26
notes 2	-12
notes 3	-67
notes 4	-29
others 0	-18
others 1	21
rule list/need	15
rule material/need	-10
rule material/used	-8
said 0	-18
said 1	32
sure 5	-41
sure 6	-8
sure 9	38
times 1	-14
times 2	12
unit box	-17
unit bucket	-6
unit each	12
unit length	-16
unit null	-10
unit pair	6
unit qt	43
unit roll	11
unit sheet	-10
use false	-25
use true	24
`;
