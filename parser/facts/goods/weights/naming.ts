/** Written by tests/learn/goods.ts: something seen of a name, and hundredths for its being the one. */
export const NAMING = `
alone	22
alone area	-12
alone fixture	19
alone material	11
alone part	59
alone surface	-13
alone word	16
apart false	3
apart true	-37
back 0	37
back 1	54
back 2	12
back 3	-26
back 4	-27
back 5	-22
back 6	-29
back 7	-23
back 8	-19
before more	60
before new	-30
counted	-17
counted area	-32
counted fixture	-11
counted part	-4
counted surface	-27
counted tool	-22
counted word	-12
flawed false	3
goods false false	-63
goods false true	-33
goods true false	67
goods true true	-3
kind area	-18
kind area article	33
kind area count	-30
kind area length	-43
kind area pack	-12
kind area pointer	31
kind area volume	-12
kind area weight	-32
kind fixture	-11
kind fixture area	-40
kind fixture article	-31
kind fixture count	-13
kind fixture length	-49
kind fixture pack	6
kind fixture pointer	-71
kind fixture volume	-39
kind fixture weight	-4
kind material	19
kind material area	75
kind material article	-6
kind material count	8
kind material length	51
kind material pack	27
kind material pointer	-15
kind material volume	-10
kind material weight	57
kind part	11
kind part area	-15
kind part article	-10
kind part count	42
kind part pack	-33
kind part pointer	-8
kind part volume	-30
kind part weight	-39
kind surface	-18
kind surface area	-66
kind surface article	30
kind surface count	-31
kind surface length	-30
kind surface pack	-19
kind surface pointer	47
kind surface volume	12
kind surface weight	-55
kind tool	7
kind tool article	25
kind tool count	24
kind tool pack	-34
kind tool pointer	31
kind word	-21
kind word area	-75
kind word article	-25
kind word count	-19
kind word length	-26
kind word pack	-19
kind word pointer	-16
kind word volume	-7
kind word weight	-39
kind work	-13
kind work count	-14
kind work pack	-12
label	13
like told 1	-13
like told 2	-26
like told 3	2
modified	74
more area	-47
more fixture	-34
more material	51
more part	-12
more surface	-20
more tool	-20
more word	-8
never told false	-6
never told true	-32
not sold so	-38
of -	-16
of about	-52
of above	-8
of after	-39
of at	-26
of before	-28
of behind	-44
of by	25
of down	-10
of for	-46
of from	-10
of of	4
of off	-29
of on	-25
of out	-10
of over	-33
of past	-36
of to	-16
of up	-13
of with	-27
of without	24
other room	-42
own code	26
own false	-74
own first area	40
own first code	70
own first finish	-5
own first fixture	25
own first material	41
own first part	52
own first surface	59
own first tool	80
own first word	-3
own goods false	-12
own goods true	41
own head code	37
own head code length	26
own head finish	-40
own head finish count	-13
own head finish pack	-58
own head finish volume	64
own head fixture	13
own head material	41
own head material area	52
own head material count	51
own head material length	48
own head material pack	34
own head material volume	51
own head material weight	35
own head part	23
own head part count	21
own head part pack	45
own head surface	72
own head surface count	69
own head surface pack	41
own head tool	64
own head tool count	64
own head word	5
own head word article	-35
own head word count	-19
own head word length	55
own head word pack	57
own head word volume	7
own last adhesive	34
own last board	61
own last boards	59
own last brackets	30
own last cabinet screws	38
own last cable	33
own last caulk	55
own last clamps	43
own last couplings	-48
own last deck screws	40
own last discs	70
own last elbows	50
own last end caps	-31
own last epoxy	51
own last filler	30
own last filters	55
own last flashing tape	31
own last flex	34
own last foam	75
own last glue	40
own last gray	-24
own last hangers	44
own last hinges	62
own last kit	82
own last knobs	48
own last mastic	32
own last mesh	46
own last mesh tape	38
own last mortar	40
own last mud	40
own last panels	44
own last pins	34
own last pipe	31
own last please	-27
own last plugs	45
own last ply	49
own last poly	52
own last primer	-27
own last rapid set	27
own last screw	52
own last screws	54
own last sealant	41
own last sealer	41
own last shims	32
own last silicone	35
own last structural screws	37
own last tape	58
own last thinset	51
own last tile	28
own last tiles	20
own last treads	46
own last washers	67
own last white	-33
own last wood filler	39
own of false article	-46
own of false count	24
own of false pack	-15
own of false volume	63
own of true area	59
own of true count	7
own of true length	54
own of true pack	55
own of true volume	40
own of true weight	55
own plural	42
own pointing false	36
own pointing true	-82
own true	34
own unit area	65
own unit article	-46
own unit count	23
own unit length	54
own unit pack	39
own unit volume	47
own unit weight	55
own verb	12
own words 1	31
own words 2	27
own words 3	39
own words 4	70
place -	-12
place here	37
place rest	-24
place subject	-7
plural false area true	-11
plural false article -	-11
plural false count false	2
plural false count true	-45
plural false length false	15
plural false length true	-13
plural false pack -	16
plural false pack false	-22
plural false pack true	-19
plural false pointer -	16
plural false volume false	-16
plural false volume true	-46
plural false weight false	-60
plural false weight true	-54
plural true area true	-53
plural true article -	26
plural true count false	-17
plural true count true	30
plural true length true	-42
plural true pack -	-16
plural true pack false	-20
plural true pack true	-4
plural true pointer -	7
plural true volume false	-6
plural true volume true	8
plural true weight false	27
plural true weight true	54
pointing false	-36
pointing true	82
ran out	17
rank 0	39
rank 0 article	21
rank 0 count	38
rank 0 pointer	48
rank 1	3
rank 1 article	15
rank 1 pointer	68
rank 2	-6
rank 2 article	25
rank 2 count	-8
rank 2 pointer	-56
rank 3	-20
rank 3 article	-31
rank 3 count	-19
rank 3 pointer	-63
rank 4	-13
rank 4 article	-15
rank 4 count	-13
rank 4 pointer	-45
rank 5	-17
rank 5 article	-63
rank 5 count	-15
rank 5 pointer	-41
rank 6	-34
rank 6 article	-109
rank 6 count	-29
rank 6 pointer	-81
said copula	-7
said imperative	-21
said modal	-30
said none	-3
said owed	-19
said past	7
said present	-8
same unit	8
sentences 0	39
sentences 1	-48
sentences 2	-32
sentences 3	-23
sized	-18
sold so	104
the	-9
told 1	5
told 1 area	-28
told 1 article	-93
told 1 count	24
told 1 length	-31
told 1 pack	-12
told 1 pointer	9
told 1 volume	11
told 1 weight	22
told 2	-19
told 2 article	-59
told 2 count	-31
told 2 length	-6
told 2 pack	12
told 2 pointer	-65
told 2 volume	-45
told 3	10
told 3 count	10
told 3 pack	10
told before	8
told by false	-4
told by true	8
told here	-37
touches false	32
touches true	35
use buy	-14
use have	11
use use	23
words 1	-32
words 2	3
words 3	40
words 4	-9
`;
