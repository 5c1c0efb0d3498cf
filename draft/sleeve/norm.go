package sleeve

// Norm is what is usual in a sleeve of a style. Draft and truing report take
// it from here.
type Norm struct {
	// Name of the style among words: "set-in sleeve".
	Name string
	// LeastEase, UsualEase and MostEase are by how much the sleeve head is
	// longer than the armhole, as a share of the whole armhole.
	LeastEase, UsualEase, MostEase float64
	// LowestHead, UsualHead and HighestHead are the head height as a share of
	// the armhole's depth.
	LowestHead, UsualHead, HighestHead float64
	// Widest is the most that the bicep line is of the upper arm girth.
	Widest float64
	// Hug is how high the head lies on the armhole's own curve, as a share of the
	// armhole's depth.
	Hug float64
}

// Ease of a set-in woven sleeve is 2 to 4.5 cm on armholes of 42 to 54 cm, that
// of a shirt sleeve up to 3 % [source.CommonPractice]; how much of it is usual is
// our own [source.OwnChoice]: a tailored sleeve of two pieces takes more.
//
// A close head is as high as 5/6 of the armhole's depth [source.Bunka]; a little
// lower lets the arm be raised, and a shirt's is a good deal lower
// [source.CommonPractice]. The limits on both sides, and how wide a sleeve may be
// beside the arm, are our own [source.OwnChoice].
//
// A head lies on the armhole over the lowest third of its depth. That of a shirt
// cannot and be low: with its armhole 20.8 cm deep a woman's of size 12 would follow it
// up to 7 of its 12 cm, steeply, and go over the arm from there in a corner and a flat
// top. It leaves the armhole after a fifth, as the arm is raised and the body stands
// off there [source.OwnChoice].
var (
	setInNorm    = Norm{"set-in sleeve", 0.048, 0.060, 0.083, 0.70, 0.80, 0.90, 1.45, 1. / 3}
	twoPieceNorm = Norm{"two-piece sleeve", 0.048, 0.068, 0.083, 0.70, 0.80, 0.90, 1.45, 1. / 3}
	shirtNorm    = Norm{"shirt sleeve", 0, 0.015, 0.030, 0.50, 0.58, 0.88, 1.60, 1. / 5}
)

// BicepEase is the least by which the bicep line is longer than the upper arm
// girth, in mm [source.CommonPractice].
const BicepEase = 40

// frontShare is the share of the ease that lies in the front of the head: a
// little less than half, as the arm reaches forward and the back of the head
// goes over the shoulder blade [source.CommonPractice].
const frontShare = 0.45
