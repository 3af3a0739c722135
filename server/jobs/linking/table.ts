/** Written by tests/learn/links.ts: a sign of what a fact is told of, and hundredths for it. */
export const LINKS = `
due now done head its	60
due now done head other	18
due now fixed head its	-54
due now flaw head other	-28
due now flaw head same	90
due now plan head its	-59
flaw false fixed	9
flaw false flaw	-9
flaw false head in	6
flaw false head other	-12
flaw false head same	29
flaw true done	7
flaw true head in	65
flaw true head other	-13
flaw true head same	-19
flaw true plan	21
head in	11
head in day	-28
head in days	27
head in done work	-74
head in done work closed	25
head in fixed flaw	60
head in flaw flaw	29
head in flaw flaw closed	-25
head in flaw work	-53
head in flaw work closed	-46
head in next	8
head in note	8
head in plan flaw	111
head in plan work	-32
head in plan work closed	23
head in week	28
head in yesterday	14
head its	9
head its day	8
head its days	-13
head its done flaw	24
head its done work	28
head its fixed flaw	41
head its fixed flaw closed	-16
head its flaw flaw	47
head its flaw flaw closed	-55
head its flaw work	8
head its flaw work closed	-5
head its last	-35
head its next	48
head its note	-8
head its plan flaw closed	-48
head its plan work	29
head its plan work closed	15
head its week	-33
head its yesterday	10
head other	-19
head other day	-10
head other days	-25
head other done flaw	-19
head other done flaw closed	-15
head other done work closed	-9
head other fixed flaw	-25
head other fixed flaw closed	5
head other fixed work	-23
head other fixed work closed	-26
head other flaw flaw	-16
head other flaw work	-26
head other flaw work closed	-19
head other note	-28
head other plan work	-25
head other plan work closed	-20
head other week	-25
head other yesterday	-21
head same	12
head same day	-8
head same days	8
head same done flaw	22
head same done flaw closed	26
head same done work	35
head same done work closed	-73
head same fixed flaw closed	-15
head same flaw flaw	-7
head same flaw flaw closed	47
head same flaw work	49
head same flaw work closed	10
head same last	-48
head same next	18
head same note	50
head same plan flaw	-23
head same plan flaw closed	19
head same plan work	56
head same plan work closed	-29
head same week	21
head same yesterday	10
its all	-9
its all done flaw closed	-15
its all done work closed	-50
its all flaw work closed	34
its all plan flaw closed	32
its all plan work closed	-23
its half done flaw	55
its half done flaw closed	-12
its half done work	-13
its half done work closed	9
its half fixed flaw closed	55
its half fixed work closed	-13
its half flaw flaw	12
its half flaw flaw closed	-28
its half flaw work closed	-18
its half plan flaw	28
its half plan work	10
its most	77
its none	-16
its none done flaw	-26
its none done work closed	-10
its none fixed flaw closed	-60
its none fixed work	-28
its none fixed work closed	-22
its none flaw work	-24
its none flaw work closed	-22
its none plan flaw	-14
its none plan work	-14
its none plan work closed	-15
its some done flaw closed	11
its some done work closed	-11
its some fixed flaw	46
its some fixed flaw closed	19
its some flaw flaw closed	-19
its some flaw work	58
its some flaw work closed	-38
its some plan flaw	35
its some plan flaw closed	-34
its some plan work	37
its some plan work closed	-21
known all	37
known half	20
known most	61
known none	-26
known some	-19
named all done flaw	-54
named all done flaw closed	24
named all done work closed	15
named all plan flaw	50
named all plan work closed	15
named half done flaw	34
named half done flaw closed	-10
named half done work	-10
named half done work closed	-25
named half fixed flaw	8
named half fixed flaw closed	55
named half flaw flaw	28
named half flaw flaw closed	43
named half flaw work	31
named half flaw work closed	-6
named half plan flaw	14
named half plan flaw closed	-28
named half plan work	16
named half plan work closed	-14
named most done flaw closed	46
named most plan flaw closed	29
named none done flaw	-16
named none done work closed	-10
named none fixed flaw	6
named none fixed flaw closed	-41
named none fixed work	-28
named none fixed work closed	-22
named none flaw work	-24
named none flaw work closed	-22
named none plan flaw	-8
named none plan work	-14
named none plan work closed	-15
named some done flaw	15
named some done flaw closed	-7
named some done work	24
named some done work closed	7
named some fixed flaw	9
named some fixed work closed	-15
named some flaw flaw closed	-57
named some flaw work closed	-41
named some plan flaw	24
named some plan work	16
named some plan work closed	-12
new flaw	11
new plan	-6
new points true	8
new size 1	-6
new size 2	-22
new size 3	11
new size 4	13
no point days	-20
no point last	-39
no point next	13
no point note	-21
no point week	19
no point yesterday	9
none	10
none after a	-52
none after again	7
none after all	32
none after also	-18
none after and	-21
none after are	-44
none after at	55
none after back	-77
none after bag	10
none after bar	-20
none after before	-63
none after both	-57
none after box	64
none after busted	-85
none after buy	9
none after by	-54
none after cabinet	33
none after door	6
none after down	11
none after em	-68
none after fill	-53
none after five	-8
none after foot	-25
none after for	46
none after four	5
none after from	35
none after front	37
none after ft	-28
none after get	-7
none after got	-63
none after gotta	-55
none after half	13
none after hall	-34
none after has	-36
none after have	-12
none after he	-13
none after her	20
none after him	42
none after his	-9
none after house	7
none after i	21
none after i've	-29
none after in	-44
none after is	-62
none after it	10
none after its	51
none after like	-53
none after monday	-15
none after more	-47
none after need	22
none after needs	-47
none after new	-52
none after no	5
none after not	24
none after of	-62
none after off	10
none after on	12
none after one	-80
none after only	27
none after out	-52
none after outside	-59
none after over	12
none after pulls	-14
none after put	-57
none after room	-78
none after round	7
none after run	-54
none after said	20
none after says	27
none after she	10
none after sheets	-20
none after sign	-14
none after so	-8
none after stairs	35
none after still	11
none after that	-12
none after that's	-15
none after the	15
none after then	26
none after they	-31
none after those	-37
none after three	-54
none after to	12
none after toilet	-50
none after touch	-10
none after under	37
none after up	7
none after wants	10
none after we	71
none after window	5
none after with	46
none after you	27
none before a	62
none before and	-42
none before at	52
none before but	11
none before don't	-7
none before i	-36
none before in	-19
none before not	42
none before now	-23
none before of	-73
none before on	35
none before so	36
none before the	25
none day later	-11
none day no	20
none first a	-15
none first he	11
none first it	-24
none first kiki	-48
none first needs	-46
none first no	55
none first she	21
none first that	-55
none first the	11
none first wants	-53
none first we	5
none flaw	6
none flaw weighed	6
none plan	13
none plan weighed	13
none points false	9
none points true	11
none size long	-32
none size scrap	26
none size short	28
none verb book	52
none verb close	45
none verb install	-35
none verb replace	-17
none verb run	-55
none verb screw	16
none verb take	41
none who other	56
none who us	5
none word about	22
none word all	-62
none word along	-13
none word and	-35
none word are	-46
none word asked	-43
none word at	-51
none word back	-26
none word bar	-37
none word bay	-16
none word be	-22
none word before	-24
none word black	28
none word booked	64
none word both	-40
none word box	77
none word brass	-54
none word but	38
none word by	-9
none word came	-56
none word can	43
none word can't	-51
none word chimney	-79
none word clean	60
none word close	-6
none word coat	-39
none word corner	-10
none word cover	-17
none word day	-52
none word dimmer	45
none word do	-6
none word doesn't	-11
none word door	-24
none word down	19
none word em	-73
none word end	-71
none word first	30
none word five	55
none word foot	16
none word for	-5
none word friday	12
none word from	-17
none word get	-49
none word gets	-73
none word go	-49
none word gone	-94
none word got	54
none word had	103
none word hall	-77
none word has	18
none word have	9
none word he	17
none word her	61
none word hinge	-70
none word his	69
none word hole	13
none word hook	-38
none word i	33
none word i'm	74
none word in	-29
none word is	26
none word it's	-38
none word its	18
none word just	-11
none word kiki	-48
none word kitchen	-79
none word landlord	42
none word monday	-83
none word morning	-42
none word needs	-87
none word new	20
none word no	-13
none word nobody	44
none word north	15
none word not	-5
none word now	-48
none word of	-48
none word off	-52
none word old	42
none word on	-7
none word one	-20
none word only	58
none word out	20
none word outlet	-41
none word over	-32
none word paint	-79
none word piano	37
none word put	-6
none word rail	-88
none word ran	-55
none word right	-46
none word room	-21
none word saturday	56
none word says	-8
none word second	-60
none word she	27
none word shelves	-33
none word sits	-60
none word so	40
none word somebody	61
none word stays	66
none word steps	-41
none word still	-44
none word that	18
none word that's	63
none word them	35
none word then	26
none word there	-5
none word they	21
none word thing	25
none word those	-27
none word three	-51
none word thursday	47
none word til	17
none word tile	14
none word till	-17
none word tomorrow	-61
none word top	9
none word tuesday	-58
none word two	48
none word under	-11
none word until	12
none word up	-11
none word us	-11
none word wall	-11
none word want	-28
none word wants	-96
none word we	-55
none word when	-82
none word whole	20
none word with	-67
none word x	91
none word you	-48
pair done work	6
pair done work closed	-15
pair fixed flaw	9
pair fixed work	-28
pair fixed work closed	-26
pair flaw flaw closed	-16
pair flaw work	-13
pair flaw work closed	-20
pair plan flaw	8
pair plan flaw closed	-8
pair plan work	10
pair plan work closed	-14
points day done flaw	19
points day done flaw closed	-24
points day done work	-42
points day fixed flaw	72
points day fixed flaw closed	-27
points day fixed work closed	-6
points day flaw flaw closed	-12
points day flaw work	-13
points day flaw work closed	-13
points day plan flaw	-47
points day plan flaw closed	-28
points day plan work	-23
points day plan work closed	-38
points day things 0	-29
points day things 1	-11
points day things 2	83
points days done flaw	-14
points days done flaw closed	18
points days done work	-35
points days done work closed	-30
points days fixed flaw	29
points days fixed flaw closed	28
points days fixed work closed	-17
points days flaw flaw	44
points days flaw flaw closed	35
points days flaw work	13
points days flaw work closed	-25
points days plan flaw closed	-39
points days plan work	-79
points days plan work closed	-36
points days things 1	-12
points days things 2	11
points last done flaw	24
points last flaw flaw	-41
points last flaw flaw closed	-24
points last plan flaw	90
points last plan flaw closed	6
points last plan work closed	24
points last things 0	-12
points last things 1	32
points next done flaw	8
points next done flaw closed	-10
points next done work	17
points next done work closed	-19
points next fixed flaw	-59
points next fixed flaw closed	32
points next flaw flaw	-20
points next flaw flaw closed	5
points next flaw work	26
points next flaw work closed	41
points next plan flaw	18
points next plan flaw closed	35
points next plan work closed	25
points next things 0	30
points next things 1	-24
points next things 3	26
points next things 4	37
points note done flaw closed	-19
points note done work	-13
points note flaw flaw	-38
points note plan flaw	-14
points note plan work closed	38
points note things 0	-18
points note things 1	9
points week done flaw	-56
points week done flaw closed	-29
points week done work closed	-28
points week fixed flaw	-55
points week flaw flaw	5
points week flaw flaw closed	-17
points week plan flaw	-33
points week plan flaw closed	-25
points week plan work closed	-21
points week things 1	-25
points yesterday done flaw	-20
points yesterday done flaw closed	-43
points yesterday done work	57
points yesterday fixed flaw	-15
points yesterday fixed work closed	-21
points yesterday flaw work	6
points yesterday flaw work closed	-15
points yesterday plan flaw closed	-41
points yesterday plan work	-62
points yesterday things 0	-32
points yesterday things 1	15
points yesterday things 2	10
room same	-8
room same head in	-12
room same head its	-9
room same head other	-8
room same head same	10
room unsaid	-6
room unsaid head in	24
room unsaid head its	17
room unsaid head other	-23
room unsaid head same	13
things 0	-25
things 0 day	-29
things 0 last	-15
things 0 next	-8
things 0 note	-27
things 0 yesterday	-32
things 1	-5
things 1 days	-18
things 1 last	-24
things 1 next	14
things 1 week	-7
things 2	23
things 2 day	6
things 2 days	-10
things 2 last	-27
things 2 next	34
things 2 note	62
things 2 week	-16
things 2 yesterday	39
things 3	28
things 3 days	76
things 3 last	68
things 3 next	13
things 3 yesterday	-21
things 4	56
things 4 next	56
when day	-13
when day done flaw	-26
when day done flaw closed	62
when day done work	-5
when day done work closed	-19
when day fixed flaw	61
when day fixed flaw closed	31
when day fixed work closed	-6
when day flaw flaw closed	-49
when day flaw work	-34
when day flaw work closed	-21
when day plan flaw	-19
when day plan flaw closed	-43
when day plan work	-23
when day plan work closed	-39
when days	-11
when days done flaw	30
when days done flaw closed	-33
when days done work	-60
when days done work closed	-37
when days fixed flaw	67
when days fixed flaw closed	28
when days fixed work closed	-17
when days flaw flaw	18
when days flaw flaw closed	-14
when days flaw work	24
when days flaw work closed	-40
when days plan flaw	-8
when days plan flaw closed	-88
when days plan work	46
when days plan work closed	-51
when last	-15
when last done flaw	-30
when last done work	-35
when last flaw flaw	-12
when last flaw flaw closed	-38
when last flaw work	-28
when last plan flaw	25
when last plan flaw closed	9
when last plan work	-55
when last plan work closed	8
when next	12
when next done flaw closed	5
when next done work	-65
when next done work closed	-25
when next fixed flaw	-66
when next fixed flaw closed	52
when next flaw flaw	-13
when next flaw flaw closed	50
when next flaw work closed	38
when next plan flaw	55
when next plan flaw closed	47
when next plan work	-32
when next plan work closed	5
when note	-15
when note done flaw	-10
when note done flaw closed	28
when note done work	-13
when note flaw flaw	-57
when note flaw flaw closed	-17
when note flaw work	-16
when note plan flaw	-21
when note plan flaw closed	13
when note plan work closed	59
when week	-17
when week done flaw	15
when week done flaw closed	-50
when week done work closed	14
when week fixed flaw	-55
when week flaw flaw closed	-47
when week flaw work closed	-27
when week plan flaw	-7
when week plan flaw closed	-38
when week plan work closed	-37
when yesterday	-7
when yesterday done flaw	10
when yesterday done flaw closed	-41
when yesterday done work	62
when yesterday done work closed	9
when yesterday fixed flaw	-10
when yesterday fixed work closed	-22
when yesterday flaw flaw	27
when yesterday flaw flaw closed	-21
when yesterday flaw work	-5
when yesterday flaw work closed	-22
when yesterday plan flaw	-40
when yesterday plan flaw closed	-19
when yesterday plan work	17
when yesterday plan work closed	-24
work alike done flaw	28
work alike done flaw closed	-69
work alike done work	65
work alike done work closed	27
work alike head in	-21
work alike head its	57
work alike head other	5
work alike head same	-24
work alike plan flaw	-6
work alike plan flaw closed	-19
work alike plan work closed	-63
work before done flaw closed	-5
work before done work	-58
work before done work closed	12
work before head in	-13
work before head other	10
work before head same	35
work before plan flaw	22
work before plan flaw closed	27
work before plan work	57
work before plan work closed	-19
work ends head its	30
work ends head same	30
work none fixed flaw	9
work none fixed work	-28
work none fixed work closed	-26
work none flaw flaw closed	-16
work none flaw work	-13
work none flaw work closed	-20
work none head its	6
work none head other	-23
work none head same	25
work other done flaw	-6
work other done flaw closed	7
work other done work closed	-53
work other head in	27
work other head other	-20
work other head same	-8
work other plan flaw closed	-7
work other plan work	-14
work other plan work closed	-7
work same done work closed	50
work same head other	15
work same head same	34
work same plan work closed	29
`;
