/** Written by tests/learn/goods.ts: something seen of a name, and hundredths for its being the one. */
export const NAMING = `
alone	16
alone area	-19
alone fixture	48
alone material	46
alone part	11
alone surface	-13
alone word	-3
alone work	-25
apart false	6
apart true	-36
back 0	46
back 1	48
back 2	9
back 3	-17
back 4	-33
back 5	-24
back 6	-30
back 7	-24
back 8	-23
before another	-63
before more	47
before new	11
before no	39
counted	-12
counted area	-29
counted fixture	-4
counted material	-5
counted part	-11
counted surface	-24
counted tool	-7
counted word	10
counted work	-18
flawed false	41
flawed true	3
goods false false	-64
goods false true	-33
goods true false	68
goods true true	-4
kind area	-20
kind area article	19
kind area count	-30
kind area length	-33
kind area pack	-12
kind area pointer	19
kind area volume	-14
kind area weight	-34
kind fixture	-10
kind fixture area	-41
kind fixture article	-19
kind fixture count	-5
kind fixture length	-48
kind fixture pointer	-76
kind fixture volume	-40
kind fixture weight	-5
kind material	19
kind material area	81
kind material article	-3
kind material count	9
kind material length	59
kind material pack	24
kind material pointer	-31
kind material volume	4
kind material weight	55
kind part	6
kind part area	-14
kind part article	12
kind part count	23
kind part pack	-27
kind part pointer	-4
kind part volume	-24
kind part weight	-37
kind surface	-19
kind surface area	-61
kind surface article	-5
kind surface count	-17
kind surface length	-48
kind surface pack	-25
kind surface pointer	33
kind surface volume	7
kind surface weight	-51
kind tool	-3
kind tool article	14
kind tool count	7
kind tool length	-19
kind tool pack	-27
kind tool pointer	21
kind tool volume	-23
kind word	-16
kind word area	-78
kind word article	-7
kind word count	-14
kind word length	-35
kind word pack	-13
kind word pointer	-3
kind word volume	-21
kind word weight	-39
kind work	-19
kind work count	-15
kind work pack	-23
label	22
like told 1	-13
like told 2	-30
like told 3	-9
modified	87
more area	-39
more fixture	-54
more material	61
more part	-15
more surface	-27
more tool	-53
more word	3
never told false	-5
never told true	-32
not sold so	-35
of -	-13
of about	-49
of above	-7
of after	-35
of around	-17
of at	-38
of before	-26
of behind	-41
of by	13
of down	-12
of for	-34
of from	-44
of in	-25
of into	-62
of near	-22
of of	13
of off	-25
of on	-29
of out	-21
of over	-42
of past	-36
of through	-16
of to	-31
of under	-21
of up	-18
of with	-18
of without	16
other room	-32
own code	32
own false	-87
own first area	38
own first code	65
own first fixture	17
own first material	37
own first part	65
own first surface	57
own first tool	100
own first word	-6
own goods false	-10
own goods true	41
own head area	-20
own head area count	-34
own head code	45
own head code length	32
own head defect	7
own head defect count	7
own head finish	-43
own head finish count	-33
own head finish length	45
own head finish pack	-50
own head finish volume	6
own head fixture	-14
own head fixture count	13
own head fixture pack	-35
own head material	40
own head material area	54
own head material count	38
own head material length	52
own head material pack	40
own head material volume	52
own head material weight	30
own head part	37
own head part count	31
own head part length	68
own head part pack	39
own head surface	42
own head surface count	30
own head surface pack	47
own head tool	67
own head tool count	68
own head word	11
own head word article	-39
own head word count	-16
own head word length	58
own head word pack	65
own head word volume	31
own head word weight	61
own last adhesive	37
own last anchors	65
own last blocks	48
own last board	56
own last boards	75
own last bolts	88
own last bracket	40
own last brackets	7
own last brads	35
own last cabinet screws	52
own last cable	-39
own last cap	42
own last caulk	50
own last cellulose	37
own last clamps	47
own last couplings	-50
own last deck screws	46
own last discs	70
own last door sweep	69
own last drip edge	38
own last drywall	34
own last elbows	59
own last end caps	-28
own last epoxy	43
own last filler	27
own last filters	52
own last flashing tape	32
own last flat	-41
own last flex	31
own last foam	80
own last foil tape	25
own last glue	57
own last gray	38
own last grout	50
own last hangers	64
own last hidden hangers	34
own last hinges	68
own last hose	23
own last kit	78
own last kits	-9
own last knobs	45
own last lags	77
own last mastic	34
own last mesh	42
own last mesh tape	38
own last mortar	40
own last mud	39
own last panels	43
own last paste	40
own last pins	44
own last pipe	-42
own last please	-19
own last plugs	39
own last ply	48
own last poly	52
own last posts	69
own last primer	-13
own last rapid set	27
own last rods	57
own last roller	52
own last screw	72
own last screws	72
own last sealant	42
own last sealer	39
own last self leveler	35
own last shelf pins	35
own last shims	39
own last silicone	40
own last stain	24
own last structural screws	41
own last studs	56
own last tape	53
own last thinset	46
own last tile	33
own last tiles	36
own last treads	60
own last washers	79
own last white	-61
own last wood filler	44
own last x	57
own of false article	-45
own of false count	16
own of false pack	-17
own of false pointer	3
own of false volume	55
own of false weight	44
own of true area	46
own of true count	39
own of true length	60
own of true pack	60
own of true volume	45
own of true weight	47
own plural	36
own pointing false	34
own pointing true	-75
own true	34
own unit area	49
own unit article	-45
own unit count	19
own unit length	59
own unit pack	41
own unit pointer	3
own unit volume	49
own unit weight	54
own verb	4
own words 1	25
own words 2	43
own words 3	45
own words 4	72
place -	-27
place here	46
place rest	-27
place subject	-6
plural false area true	-20
plural false article -	-19
plural false count false	-13
plural false count true	-48
plural false length true	-35
plural false pack false	-32
plural false pack true	-22
plural false pointer -	-13
plural false volume false	-15
plural false volume true	-40
plural false weight false	-65
plural false weight true	-57
plural true area true	-36
plural true article -	28
plural true count false	-7
plural true count true	43
plural true length false	-17
plural true length true	-15
plural true pack false	-11
plural true pointer -	7
plural true volume false	-24
plural true volume true	6
plural true weight false	27
plural true weight true	53
pointing false	-34
pointing true	75
ran out	32
rank 0	37
rank 0 article	43
rank 0 count	34
rank 0 pointer	73
rank 1	3
rank 1 article	5
rank 1 pointer	57
rank 2	-8
rank 2 article	23
rank 2 count	-9
rank 2 pointer	-69
rank 3	-16
rank 3 article	-50
rank 3 count	-14
rank 3 pointer	-61
rank 4	-16
rank 4 article	-6
rank 4 count	-17
rank 4 pointer	-48
rank 5	-16
rank 5 article	-43
rank 5 count	-15
rank 5 pointer	-49
rank 6	-36
rank 6 article	-52
rank 6 count	-33
rank 6 pointer	-103
said copula	-4
said imperative	-22
said modal	-27
said owed	-13
said past	-4
said present	-13
same unit	8
sentences 0	36
sentences 1	-45
sentences 2	-34
sentences 3	-31
sized	-12
sold so	98
the	-6
told 1	6
told 1 area	-28
told 1 article	-46
told 1 count	19
told 1 length	-21
told 1 pack	-7
told 1 pointer	6
told 1 volume	10
told 1 weight	2
told 2	-21
told 2 article	-79
told 2 count	-24
told 2 length	-20
told 2 pack	-4
told 2 pointer	-68
told 2 volume	-39
told 3	3
told 3 count	10
told 3 length	-30
told 3 pack	7
told before	10
told by false	-10
told by true	16
told here	-46
touches false	27
touches true	43
use buy	-18
use have	-2
use need	-5
use use	18
words 1	-33
words 2	4
words 3	33
words 4	18
`;
