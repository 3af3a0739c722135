/** Written by tests/learn/goods.ts: something seen of a name, and hundredths for its being the one. */
export const NAMING = `
alone	9
alone area	-22
alone fixture	58
alone material	20
alone part	4
alone surface	-3
alone word	-3
alone work	-31
apart false	-6
apart true	-34
back 0	48
back 1	50
back 2	8
back 3	-21
back 4	-32
back 5	-23
back 6	-25
back 7	-27
back 8	-25
before another	-69
before more	37
before new	17
before no	30
counted	-13
counted area	4
counted material	-12
counted part	-10
counted surface	-28
counted tool	13
counted word	10
flawed false	21
goods false false	-62
goods false true	-31
goods true false	65
goods true true	-4
kind area	-19
kind area article	16
kind area count	-27
kind area length	-35
kind area pack	-15
kind area pointer	26
kind area volume	-20
kind area weight	-27
kind fixture	-15
kind fixture area	-38
kind fixture article	-19
kind fixture count	-15
kind fixture length	-47
kind fixture pack	-3
kind fixture pointer	-87
kind fixture volume	-32
kind fixture weight	-16
kind material	22
kind material area	81
kind material article	2
kind material count	14
kind material length	61
kind material pack	25
kind material pointer	-33
kind material volume	10
kind material weight	57
kind part	10
kind part area	-13
kind part article	21
kind part count	31
kind part length	12
kind part pack	-30
kind part volume	-25
kind part weight	-45
kind surface	-18
kind surface area	-58
kind surface article	-12
kind surface count	-13
kind surface length	-50
kind surface pack	-25
kind surface pointer	37
kind surface volume	7
kind surface weight	-49
kind tool	-3
kind tool article	55
kind tool length	-35
kind tool pack	-27
kind tool pointer	26
kind tool volume	-16
kind word	-20
kind word area	-77
kind word article	-38
kind word count	-22
kind word length	-41
kind word pack	-10
kind word pointer	5
kind word volume	-28
kind word weight	-32
kind work	-8
kind work pack	-14
label	12
like told 1	-8
like told 2	-28
modified	106
more area	-41
more fixture	-36
more material	65
more part	6
more tool	14
more word	-18
never told false	-8
never told true	-30
not sold so	-34
of -	-10
of about	-45
of above	-9
of after	-38
of along	-17
of around	-16
of at	-40
of before	5
of behind	-33
of between	-89
of by	-22
of down	-17
of for	-43
of from	-33
of in	-27
of into	-53
of near	-22
of of	14
of off	-21
of on	-35
of out	-20
of over	-39
of past	-32
of through	-23
of to	-19
of under	-22
of up	-15
of with	-11
of without	15
other room	-29
own false	-106
own first area	37
own first code	84
own first finish	8
own first fixture	20
own first material	43
own first part	64
own first surface	53
own first tool	99
own first word	-20
own goods false	-20
own goods true	43
own head area	-49
own head area count	-63
own head code	79
own head defect	11
own head defect count	11
own head finish	-26
own head finish count	-3
own head finish length	25
own head finish pack	-53
own head finish volume	11
own head fixture	-12
own head fixture pack	-31
own head material	38
own head material area	45
own head material count	37
own head material length	36
own head material pack	37
own head material volume	52
own head material weight	30
own head part	39
own head part count	32
own head part length	70
own head part pack	46
own head surface	33
own head surface count	29
own head surface pack	-12
own head tool	67
own head tool count	69
own head word	10
own head word article	-34
own head word count	-18
own head word length	18
own head word pack	64
own head word volume	39
own head word weight	57
own last adhesive	39
own last anchor	61
own last base	72
own last blocks	45
own last board	-26
own last boards	77
own last bolt	65
own last bolts	81
own last bonding primer	30
own last bracket	40
own last brackets	68
own last brads	36
own last brushes	65
own last cabinet screws	43
own last cable	-46
own last cap	49
own last casing	39
own last caulk	50
own last ceiling white	57
own last cellulose	37
own last clamps	51
own last clips	56
own last color	54
own last construction adhesive	52
own last contractor bags	70
own last couplings	-50
own last deck screws	47
own last discs	78
own last drip edge	37
own last drywall	34
own last elbow	45
own last elbows	65
own last enamel	47
own last end caps	-32
own last epoxy	41
own last filler	29
own last filters	52
own last flashing tape	45
own last flat	-47
own last flex	-27
own last foam	87
own last foil tape	29
own last gasket	57
own last glue	64
own last gray	37
own last grout	59
own last hangers	62
own last hidden hangers	33
own last hinges	63
own last hose	29
own last kit	69
own last kits	-14
own last knobs	44
own last lacquer	-52
own last lags	71
own last mastic	37
own last mesh	40
own last mesh tape	44
own last mortar	43
own last mud	43
own last nails	35
own last old work boxes	57
own last panels	46
own last paste	48
own last pins	49
own last pipe	-31
own last please	-24
own last plugs	33
own last ply	47
own last poly	49
own last posts	62
own last primer	-14
own last rapid set	29
own last red	9
own last ring	74
own last rods	54
own last roller	57
own last screw	61
own last screws	64
own last sealant	45
own last sealer	34
own last self leveler	34
own last shelf pins	31
own last shims	61
own last silicone	47
own last stain	27
own last structural screws	47
own last studs	49
own last tapcons	44
own last tape	53
own last thinset	45
own last tile	48
own last tiles	27
own last toggle bolts	58
own last toggles	42
own last treads	52
own last trim screws	44
own last varnish	38
own last washers	84
own last white	-8
own last wire nuts	42
own last wood filler	42
own last x	79
own of false article	-40
own of false count	18
own of false length	52
own of false pack	-13
own of false pointer	6
own of false volume	54
own of false weight	44
own of true area	62
own of true count	31
own of true length	39
own of true pack	59
own of true volume	52
own of true weight	41
own plural	37
own pointing false	33
own pointing true	-67
own true	33
own unit area	63
own unit article	-40
own unit count	20
own unit length	43
own unit pack	40
own unit pointer	6
own unit volume	54
own unit weight	50
own verb	11
own words 1	25
own words 2	49
own words 3	18
own words 4	84
place -	-18
place here	48
place rest	-25
place subject	-8
plural false area true	-17
plural false count false	-9
plural false count true	-49
plural false length true	-3
plural false pack -	3
plural false pack false	-26
plural false pack true	-21
plural false pointer -	-17
plural false volume false	-6
plural false volume true	-36
plural false weight false	-78
plural false weight true	-56
plural true area true	-30
plural true article -	11
plural true count false	-11
plural true count true	45
plural true length false	-22
plural true length true	-43
plural true pack -	-3
plural true pack false	-13
plural true pointer -	15
plural true volume false	-46
plural true volume true	-6
plural true weight false	49
plural true weight true	51
pointing false	-33
pointing true	67
ran out	46
rank 0	36
rank 0 article	54
rank 0 count	34
rank 0 pointer	57
rank 1	4
rank 1 count	2
rank 1 pointer	51
rank 2	-5
rank 2 article	31
rank 2 count	-7
rank 2 pointer	-67
rank 3	-17
rank 3 article	-38
rank 3 count	-17
rank 3 pointer	-11
rank 4	-17
rank 4 article	-13
rank 4 count	-17
rank 4 pointer	-42
rank 5	-19
rank 5 article	-52
rank 5 count	-17
rank 5 pointer	-48
rank 6	-35
rank 6 article	-85
rank 6 count	-31
rank 6 pointer	-103
said copula	-5
said imperative	-18
said modal	-24
said owed	-8
said past	-6
said present	-9
same unit	5
sentences 0	32
sentences 1	-46
sentences 2	-31
sentences 3	-30
sized	-13
sold so	104
the	-3
told 1	11
told 1 area	-26
told 1 article	-29
told 1 count	27
told 1 length	-20
told 1 pack	-7
told 1 pointer	-8
told 1 volume	37
told 1 weight	-4
told 2	-27
told 2 article	-89
told 2 count	-29
told 2 length	-12
told 2 pack	-13
told 2 pointer	-65
told 2 volume	-31
told 3	-14
told 3 count	-9
told 3 length	-27
told 3 pack	-5
told 3 pointer	-31
told 3 volume	-49
told before	13
told by false	-4
told by true	10
told here	-57
touches false	40
touches true	12
use buy	-23
use have	-2
use use	20
words 1	-29
words 2	5
words 3	12
words 4	22
`;
