/** Written by tests/learn/links.ts: a sign of what a fact is told of, and hundredths for it. */
export const LINKS = `
due now done head in	101
due now done head its	49
due now done head other	41
due now done head same	32
due now fixed head in	63
due now fixed head other	-18
due now flaw head in	20
due now flaw head its	51
due now flaw head other	15
due now flaw head same	-12
due now plan head in	-17
due now plan head its	-15
due now plan head other	34
due now plan head same	-6
flaw false flaw	-9
flaw false head in	5
flaw false head other	-13
flaw false head same	30
flaw true done	14
flaw true fixed	25
flaw true flaw	-5
flaw true head in	19
flaw true head its	6
flaw true head other	21
flaw true plan	35
head in day	10
head in days	-6
head in done flaw	19
head in done work	5
head in done work closed	-18
head in fixed flaw	41
head in fixed flaw closed	-12
head in fixed work	-27
head in fixed work closed	-55
head in flaw flaw closed	23
head in flaw work	31
head in flaw work closed	8
head in last	11
head in next	-12
head in note	20
head in plan flaw	23
head in plan flaw closed	-9
head in plan work	27
head in plan work closed	-18
head in week	48
head in yesterday	6
head its day	-22
head its days	9
head its done flaw	9
head its done flaw closed	-8
head its done work	13
head its done work closed	-29
head its fixed flaw	12
head its fixed flaw closed	-15
head its fixed work	47
head its fixed work closed	34
head its flaw flaw	15
head its flaw work	32
head its last	-12
head its next	27
head its note	30
head its plan flaw	32
head its plan flaw closed	-38
head its plan work	-13
head its plan work closed	28
head its week	7
head its yesterday	-5
head other	-14
head other days	-20
head other done flaw closed	-9
head other fixed flaw	-14
head other fixed work	-10
head other fixed work closed	-18
head other flaw flaw	-9
head other flaw flaw closed	-27
head other flaw work	-18
head other flaw work closed	-22
head other last	-15
head other next	6
head other note	-25
head other plan flaw closed	8
head other plan work	-33
head other week	-39
head other yesterday	-9
head same	13
head same day	18
head same days	16
head same done flaw	32
head same done flaw closed	26
head same done work	37
head same done work closed	-26
head same fixed flaw	72
head same fixed flaw closed	12
head same flaw flaw	7
head same flaw flaw closed	32
head same flaw work	-24
head same flaw work closed	-28
head same next	-5
head same note	-21
head same plan flaw	-6
head same plan flaw closed	8
head same plan work	49
head same plan work closed	-47
head same week	24
head same yesterday	25
its all	9
its all done flaw closed	-12
its all done work closed	-59
its all fixed work closed	16
its all flaw work	13
its all flaw work closed	51
its all plan flaw	42
its all plan flaw closed	-43
its all plan work closed	23
its half	17
its half done flaw	13
its half done flaw closed	19
its half done work	59
its half done work closed	-19
its half fixed flaw	65
its half fixed flaw closed	74
its half fixed work closed	-30
its half flaw flaw	53
its half flaw flaw closed	-26
its half flaw work	39
its half flaw work closed	-47
its half plan flaw	12
its half plan flaw closed	-8
its half plan work	13
its half plan work closed	-7
its most	-12
its most done flaw closed	-41
its most done work closed	-9
its most flaw flaw closed	43
its most plan work	-42
its most plan work closed	-41
its none	-17
its none done flaw closed	-14
its none done work	-5
its none done work closed	-12
its none fixed flaw	-12
its none fixed flaw closed	-32
its none fixed work	-55
its none fixed work closed	-18
its none flaw flaw	-16
its none flaw flaw closed	-17
its none flaw work	-15
its none flaw work closed	-21
its none plan flaw	-7
its none plan flaw closed	-6
its none plan work closed	-21
its some done flaw	6
its some done flaw closed	7
its some done work	-8
its some done work closed	-7
its some fixed work	26
its some fixed work closed	-19
its some flaw flaw closed	-6
its some flaw work	-32
its some flaw work closed	-13
its some plan flaw	17
known all	54
known half	22
known most	65
known none	-31
known some	-16
named all done flaw	-64
named all done work closed	-18
named all flaw flaw closed	64
named all flaw work closed	36
named all plan flaw	40
named all plan work closed	36
named half done flaw	-29
named half done work	10
named half done work closed	-34
named half fixed flaw	20
named half fixed flaw closed	29
named half fixed work	37
named half flaw flaw closed	25
named half flaw work	6
named half flaw work closed	16
named half plan flaw	20
named half plan flaw closed	18
named half plan work	24
named half plan work closed	-16
named most done flaw closed	-10
named most done work closed	-27
named most flaw flaw closed	90
named most plan flaw	22
named most plan flaw closed	28
named most plan work closed	53
named none done flaw closed	-19
named none done work	-5
named none done work closed	-13
named none fixed flaw	-8
named none fixed flaw closed	-33
named none fixed work	-16
named none fixed work closed	-18
named none flaw flaw	-17
named none flaw flaw closed	-17
named none flaw work	-16
named none flaw work closed	-21
named none plan flaw closed	-6
named none plan work	-6
named none plan work closed	-21
named some done flaw	38
named some done flaw closed	19
named some done work	27
named some fixed flaw	12
named some fixed flaw closed	7
named some fixed work	6
named some fixed work closed	-27
named some flaw flaw	15
named some flaw flaw closed	-26
named some flaw work closed	-29
named some plan flaw closed	-18
named some plan work	-45
named some plan work closed	-14
new flaw	13
new plan	-6
new points true	8
new size 1	-8
new size 2	-22
new size 3	-20
new size 4	23
no point day	5
no point days	-7
no point last	-8
no point week	-24
no point yesterday	8
none	5
none after a	-41
none after about	38
none after again	23
none after all	-27
none after also	19
none after and	-22
none after are	31
none after at	-5
none after back	-22
none after bags	-47
none after bath	-45
none after be	50
none after behind	71
none after both	-27
none after bought	-20
none after box	52
none after brackets	-9
none after brass	-66
none after but	64
none after buy	-18
none after called	67
none after can	-50
none after can't	102
none after carpet	33
none after cartridge	45
none after caulk	38
none after clear	27
none after close	-30
none after coat	73
none after coffee	-46
none after come	-7
none after comes	-57
none after coming	45
none after did	-33
none after do	11
none after don't	54
none after door	-26
none after down	-72
none after eight	-52
none after em	33
none after fill	-40
none after finish	14
none after floor	33
none after foot	56
none after for	26
none after forty	-27
none after four	-31
none after friday	-14
none after from	-27
none after front	-36
none after ft	-20
none after get	20
none after gets	-12
none after getting	-15
none after go	8
none after goes	-24
none after got	-28
none after gotta	26
none after half	47
none after has	-64
none after have	-20
none after he	50
none after he's	117
none after him	23
none after hinges	22
none after his	55
none after home	-35
none after hook	75
none after house	-50
none after i	-19
none after i'll	-64
none after i'm	62
none after in	-11
none after inch	14
none after is	17
none after it	-5
none after it's	-9
none after its	-66
none after job	15
none after just	8
none after keep	-43
none after kitchen	-64
none after ladder	-50
none after leave	35
none after led	-49
none after left	37
none after like	17
none after looked	10
none after make	-20
none after man	-65
none after me	44
none after metal	-52
none after monday	35
none after more	20
none after mrs	34
none after my	-52
none after needs	-32
none after new	-19
none after no	-16
none after nobody	23
none after not	36
none after nothing	62
none after of	-46
none after off	-63
none after office	-35
none after oh	10
none after on	13
none after one	-37
none after only	-34
none after other	21
none after our	36
none after out	-70
none after outlet	27
none after outside	23
none after over	43
none after own	61
none after paint	-73
none after pantry	17
none after pick	-38
none after quarter	-37
none after r	-55
none after replace	-59
none after said	-19
none after saturday	39
none after says	-16
none after screws	-57
none after set	-67
none after she	-85
none after she's	7
none after shop	-11
none after sign	-7
none after six	56
none after skip	14
none after sleep	17
none after so	31
none after somebody	-45
none after steel	19
none after still	-8
none after sunday	31
none after supply	35
none after take	-16
none after tape	30
none after ten	56
none after thats	-16
none after then	-28
none after there	-26
none after they	-31
none after think	48
none after thirty	71
none after this	-43
none after those	-9
none after thursday	18
none after toilet	-6
none after told	51
none after tomorrow	7
none after top	-44
none after touch	18
none after truck	-25
none after tube	-22
none after tubes	-28
none after tuesday	57
none after two	-31
none after type	-63
none after um	27
none after up	-25
none after us	60
none after w	-59
none after walk	28
none after wall	11
none after want	16
none after wants	-38
none after was	-64
none after we	5
none after wednesday	-22
none after well	-28
none after while	-50
none after white	-60
none after whole	28
none after will	27
none after with	-29
none after work	14
none after x	6
none after yet	15
none after you	-53
none before a	-9
none before all	-36
none before and	-6
none before at	29
none before bay	-63
none before but	15
none before called	7
none before down	-50
none before for	-35
none before from	66
none before go	51
none before got	-12
none before has	10
none before his	22
none before i	-19
none before is	-32
none before it's	96
none before its	52
none before just	6
none before monday	-35
none before more	-23
none before no	16
none before not	51
none before now	-65
none before office	-27
none before oh	-10
none before on	-22
none before one	9
none before ordered	-24
none before room	-93
none before says	32
none before so	27
none before that's	71
none before the	36
none before then	15
none before there	-35
none before they	30
none before to	-23
none before too	-59
none before two	-79
none before um	-37
none before under	43
none before up	-23
none before while	8
none before yard	-36
none day later	-17
none day no	29
none day now	73
none first a	8
none first be	-71
none first comes	56
none first door	21
none first he	28
none first he's	50
none first i	8
none first i'll	66
none first it	-23
none first it's	23
none first its	20
none first just	34
none first kitchen	-49
none first landlord	-62
none first mrs	-42
none first needs	-74
none first no	11
none first office	-44
none first one	-12
none first porch	16
none first second	-10
none first she	61
none first tenant	68
none first that	-22
none first there's	46
none first theres	31
none first they	51
none first tomorrow	-53
none first two	8
none first we	87
none flaw	-5
none flaw weighed	-5
none plan	14
none plan weighed	14
none points true	11
none size long	-9
none size middle	-11
none size scrap	40
none size short	25
none verb ask	37
none verb book	55
none verb bring	52
none verb call	42
none verb close	60
none verb door	-6
none verb dry	-34
none verb first	-21
none verb go	-27
none verb hang	-62
none verb install	-27
none verb move	-69
none verb paint	47
none verb see	90
none verb sit	37
none verb take	12
none verb tell	-26
none verb wall	52
none verb wash	25
none who other	20
none who us	13
none word a	-16
none word about	32
none word after	-21
none word again	-75
none word ain't	76
none word all	-52
none word already	91
none word also	-82
none word am	33
none word and	-20
none word are	-9
none word as	-8
none word asks	-22
none word at	-27
none word bar	-68
none word base	-14
none word bath	-42
none word bathroom	-55
none word bay	14
none word be	-58
none word bedroom	-28
none word been	48
none word behind	-52
none word big	-68
none word black	19
none word blind	32
none word blows	-27
none word board	-12
none word bolts	-52
none word booked	30
none word both	-8
none word bottom	-5
none word bought	-49
none word box	34
none word bracket	35
none word brass	-94
none word breaker	-22
none word brown	-36
none word burn	-61
none word but	24
none word by	-7
none word cabinet	-9
none word came	35
none word can	19
none word can't	-61
none word cap	46
none word caps	67
none word carpet	49
none word carry	31
none word cartridge	-47
none word ceiling	-79
none word chimney	-21
none word clean	11
none word closer	10
none word closet	30
none word coat	42
none word come	9
none word comes	30
none word coming	-11
none word company	66
none word cord	20
none word corner	-37
none word could	-54
none word counter	38
none word cover	-8
none word dark	-50
none word days	-8
none word died	19
none word dining	-61
none word do	39
none word does	23
none word doing	90
none word door	-34
none word door's	-25
none word doors	-52
none word down	-49
none word drain	31
none word drawer	-31
none word dropped	-49
none word dry	-26
none word dryer	19
none word duct	-29
none word em	28
none word end	-30
none word every	-48
none word exam	48
none word exit	-41
none word fan	-57
none word faucet	31
none word fella	38
none word five	-29
none word floor	-33
none word foot	11
none word for	13
none word forgot	47
none word four	6
none word fourth	17
none word friday	71
none word from	-18
none word front	-70
none word ft	-54
none word furnace	-48
none word gable	-62
none word garage	30
none word gate	-81
none word gets	-39
none word getting	71
none word glass	-44
none word go	-51
none word gone	-48
none word got	49
none word gotta	-20
none word grout	15
none word gutter	39
none word guy	85
none word had	46
none word half	-64
none word hall	-63
none word hand	-45
none word handle	-43
none word hang	-56
none word hanging	-35
none word hangs	-58
none word hardware	-65
none word has	-19
none word have	-36
none word he	-14
none word he's	69
none word heater	12
none word her	80
none word here	-5
none word him	-12
none word himself	53
none word hinge	-56
none word his	56
none word hit	92
none word hole	-16
none word holes	-66
none word hook	-70
none word hot	42
none word hvac	94
none word i	42
none word i'll	66
none word i'm	-11
none word if	101
none word inch	37
none word insulation	-23
none word isn't	11
none word it'll	14
none word it's	6
none word its	20
none word just	8
none word key	-35
none word kitchen	-71
none word ladder	-60
none word lady	23
none word landing	-63
none word landlord	-62
none word last	18
none word latch	-65
none word lead	-10
none word left	-101
none word light	-30
none word lights	17
none word like	12
none word line	70
none word lobby	-62
none word lock	18
none word loft	-52
none word long	-33
none word longer	28
none word lost	-54
none word low	49
none word man	43
none word me	-25
none word mon	-77
none word monday	-61
none word more	-19
none word morning	-31
none word moved	-56
none word moves	-52
none word mrs	-42
none word must	62
none word my	45
none word need	61
none word needs	-49
none word newel	-36
none word next	-7
none word night	-14
none word nine	-45
none word no	15
none word nobody	40
none word none	-13
none word noon	24
none word north	-37
none word not	-19
none word now	-94
none word of	-23
none word off	-47
none word office	21
none word old	69
none word on	-15
none word once	-63
none word one's	-40
none word only	38
none word open	-53
none word ordered	-25
none word other	25
none word outlet	69
none word outside	-9
none word over	-17
none word own	75
none word paint	33
none word panel	-39
none word pantry	-38
none word peephole	-70
none word pipe	-12
none word plastic	22
none word plates	-59
none word porch	-19
none word post	57
none word put	42
none word rack	-49
none word radiator	37
none word rail	-102
none word ramp	10
none word ready	-27
none word rollers	-54
none word room	-54
none word round	-39
none word said	-45
none word same	-31
none word sat	43
none word saturday	-20
none word say	-7
none word says	-37
none word screen	-7
none word screw	-81
none word screws	-61
none word seal	44
none word second	6
none word see	7
none word she	60
none word she's	-22
none word shed	45
none word shop	101
none word shuts	-40
none word sides	63
none word sign	-44
none word sink	-61
none word sits	5
none word sitting	78
none word six	-8
none word skim	24
none word so	28
none word socket	20
none word somebody	-28
none word spare	36
none word stays	82
none word still	-26
none word switch	55
none word ten	-62
none word tenant	44
none word that	8
none word that's	39
none word thats	-73
none word them	57
none word then	-28
none word there	27
none word there's	20
none word theres	31
none word they	14
none word third	17
none word thirty	58
none word this	27
none word thread	16
none word threshold	-66
none word through	-47
none word tight	-30
none word til	40
none word tile	38
none word till	-40
none word time	-31
none word to	-24
none word today	33
none word toilet	-41
none word told	47
none word tomorrow	-34
none word tonight	67
none word too	-13
none word top	-67
none word tub	42
none word tues	-16
none word tuesday	-47
none word turns	13
none word twenty	29
none word two	17
none word under	-25
none word up	17
none word us	-56
none word valve	-55
none word vent	7
none word w	-72
none word waits	-60
none word wall	25
none word want	28
none word wants	-75
none word was	114
none word wash	26
none word washers	29
none word water	-82
none word wednesday	-30
none word west	44
none word wet	-66
none word when	-15
none word where	34
none word white	-24
none word whole	13
none word window	-35
none word would	-19
none word you	-78
none word your	-55
pair done flaw	6
pair done work	11
pair done work closed	-18
pair fixed work closed	-19
pair flaw flaw closed	-13
pair flaw work	-8
pair flaw work closed	-17
pair plan flaw	7
pair plan work closed	-10
points day done flaw	19
points day done flaw closed	-16
points day done work	-45
points day done work closed	-23
points day fixed flaw	47
points day fixed work	45
points day fixed work closed	-8
points day flaw flaw closed	-11
points day flaw work closed	-6
points day plan flaw	-38
points day plan flaw closed	-10
points day plan work	-18
points day plan work closed	-27
points day things 0	-37
points day things 1	15
points day things 2	51
points day things 3	49
points days done flaw	-33
points days done flaw closed	-39
points days done work	32
points days done work closed	-47
points days fixed flaw	-12
points days fixed flaw closed	-7
points days fixed work closed	-29
points days flaw flaw	18
points days flaw flaw closed	41
points days flaw work closed	-33
points days plan flaw closed	15
points days plan work closed	-53
points days things 0	-25
points days things 2	20
points days things 3	-33
points last done flaw	-27
points last fixed work	-15
points last flaw flaw closed	-22
points last flaw work	-42
points last plan flaw closed	22
points last plan work closed	-59
points last things 0	-12
points last things 1	-10
points last things 2	-18
points last things 3	-36
points next done flaw	-49
points next done flaw closed	8
points next done work closed	13
points next fixed flaw	-44
points next fixed flaw closed	35
points next fixed work	-30
points next fixed work closed	-27
points next flaw flaw	-15
points next flaw flaw closed	20
points next flaw work	20
points next flaw work closed	73
points next plan flaw	32
points next plan flaw closed	-24
points next plan work	30
points next plan work closed	-18
points next things 1	20
points next things 2	-12
points next things 3	6
points next things 4	21
points note done flaw	-15
points note done flaw closed	16
points note done work	-10
points note done work closed	-68
points note flaw flaw	-41
points note flaw flaw closed	-31
points note flaw work closed	-40
points note plan flaw	-24
points note plan flaw closed	16
points note plan work closed	-23
points note things 0	-24
points note things 1	20
points note things 2	-65
points note things 3	-39
points week done flaw	17
points week done flaw closed	-36
points week done work closed	-17
points week fixed flaw	-20
points week fixed flaw closed	31
points week flaw flaw	60
points week flaw flaw closed	16
points week flaw work closed	48
points week plan flaw	-43
points week plan flaw closed	-45
points week plan work closed	-35
points week things 0	49
points week things 1	-22
points yesterday done flaw	-6
points yesterday done flaw closed	-24
points yesterday done work	-42
points yesterday done work closed	10
points yesterday fixed flaw closed	-61
points yesterday fixed work	37
points yesterday fixed work closed	-28
points yesterday flaw flaw	20
points yesterday flaw flaw closed	13
points yesterday flaw work	-20
points yesterday plan flaw	-12
points yesterday plan flaw closed	-32
points yesterday plan work	-32
points yesterday plan work closed	-19
points yesterday things 0	-36
points yesterday things 1	29
points yesterday things 2	-24
points yesterday things 3	22
room same	-20
room same head in	-17
room same head its	-8
room same head other	-23
room same head same	7
room unsaid head in	12
room unsaid head its	8
room unsaid head other	-8
room unsaid head same	15
things 0	-30
things 0 day	-37
things 0 days	-26
things 0 last	-19
things 0 next	-9
things 0 note	-30
things 0 week	49
things 0 yesterday	-37
things 1 day	17
things 1 days	-9
things 1 note	-16
things 1 week	-21
things 1 yesterday	9
things 2	12
things 2 day	12
things 2 days	6
things 2 last	6
things 2 note	39
things 2 week	-16
things 2 yesterday	23
things 3	30
things 3 day	59
things 3 days	58
things 3 last	-19
things 3 next	20
things 3 week	33
things 3 yesterday	9
things 4	47
things 4 next	39
things 4 note	45
when day done flaw	28
when day done work	-34
when day done work closed	-23
when day fixed flaw	38
when day fixed flaw closed	15
when day fixed work	25
when day fixed work closed	-27
when day flaw flaw	14
when day flaw flaw closed	-9
when day flaw work	-8
when day flaw work closed	-27
when day plan flaw	-21
when day plan flaw closed	-20
when day plan work	-24
when day plan work closed	-34
when days	-8
when days done flaw	31
when days done flaw closed	-12
when days done work closed	-7
when days fixed flaw closed	-20
when days fixed work closed	-57
when days flaw flaw	24
when days flaw flaw closed	-26
when days flaw work	28
when days flaw work closed	-52
when days plan flaw	23
when days plan flaw closed	-21
when days plan work	-12
when days plan work closed	-27
when last	-11
when last done flaw	-54
when last done flaw closed	7
when last done work	-42
when last done work closed	-53
when last fixed flaw	33
when last fixed work	-24
when last fixed work closed	-43
when last flaw flaw	-30
when last flaw flaw closed	-30
when last flaw work	-26
when last flaw work closed	-33
when last plan flaw	-11
when last plan flaw closed	7
when last plan work	49
when last plan work closed	41
when next done flaw	-74
when next done flaw closed	20
when next done work	-30
when next done work closed	14
when next fixed flaw	-81
when next fixed flaw closed	39
when next fixed work closed	15
when next flaw flaw	-42
when next flaw flaw closed	33
when next flaw work	-36
when next flaw work closed	32
when next plan flaw	22
when next plan flaw closed	36
when next plan work closed	-11
when note	-13
when note done flaw	-41
when note done flaw closed	36
when note done work	-21
when note fixed flaw closed	41
when note flaw flaw	-59
when note flaw flaw closed	-28
when note flaw work	-26
when note flaw work closed	10
when note plan flaw	-32
when note plan flaw closed	12
when note plan work	-55
when note plan work closed	45
when week	-12
when week done flaw	28
when week done flaw closed	-75
when week done work	73
when week done work closed	-39
when week fixed flaw closed	-19
when week flaw flaw	30
when week flaw flaw closed	-30
when week plan flaw	48
when week plan flaw closed	-22
when week plan work closed	-55
when yesterday done flaw	6
when yesterday done flaw closed	-24
when yesterday done work	40
when yesterday done work closed	-20
when yesterday fixed flaw closed	-58
when yesterday fixed work closed	15
when yesterday flaw flaw	21
when yesterday flaw flaw closed	-15
when yesterday flaw work	19
when yesterday flaw work closed	-7
when yesterday plan flaw closed	-19
when yesterday plan work	10
when yesterday plan work closed	-10
work alike done flaw	-57
work alike done flaw closed	75
work alike done work	48
work alike done work closed	11
work alike head in	26
work alike head its	26
work alike head same	-14
work alike plan flaw	-49
work alike plan flaw closed	44
work alike plan work	-27
work alike plan work closed	39
work before done flaw	5
work before done flaw closed	-39
work before done work	-18
work before done work closed	-26
work before head in	-5
work before head other	-31
work before plan flaw	49
work before plan flaw closed	-62
work before plan work	-28
work before plan work closed	20
work ends done flaw	58
work ends done flaw closed	55
work ends done work	-6
work ends done work closed	-22
work ends head in	17
work ends head other	49
work ends head same	-35
work ends plan flaw	-9
work ends plan flaw closed	25
work ends plan work closed	-59
work none fixed work closed	-19
work none flaw flaw closed	-13
work none flaw work	-8
work none flaw work closed	-17
work none head in	8
work none head its	16
work none head other	-21
work none head same	16
work other done work closed	-24
work other head other	-6
work other head same	16
work other plan flaw	7
work other plan work	6
work other plan work closed	-19
work same done flaw	28
work same done flaw closed	36
work same done work	46
work same done work closed	6
work same head in	38
work same head its	8
work same head other	30
work same head same	19
work same plan flaw	-33
work same plan flaw closed	25
work same plan work	11
work same plan work closed	13
`;
