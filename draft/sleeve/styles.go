package sleeve

// The styles of sleeves. A new one is its constant and its line in the table here,
// and its drafting in a file of its own.
const (
	// SetIn has a high head with ease, for a fitted armhole.
	SetIn Style = iota
	// Shirt has a lower head with little ease, and a slit for a placket where
	// it goes into a cuff.
	Shirt
	// TwoPiece is a top sleeve and an under sleeve, bent at the elbow.
	TwoPiece
	// Cap covers the shoulder only, from notch to notch of the armhole.
	Cap
)

// styles say of each style all that sets it apart, in the order of the constants; the
// first is the usual one.
var styles = [...]traits{
	SetIn: {word: "set-in", norm: setInNorm, draw: drafting.onePiece},
	Shirt: {word: "shirt", means: "a lower head, little ease and a slit above the cuff", norm: shirtNorm,
		draw: drafting.onePiece, hasPlacket: true},
	TwoPiece: {word: "two-piece", means: "a seam in front and behind", norm: twoPieceNorm, draw: drafting.twoPiece,
		isUpright: true},
	Cap: {word: "cap", means: "over the shoulder only", norm: setInNorm, draw: drafting.capSleeve, isCap: true},
}

// Words that a job file has for it.
func (Style) Words() []string {
	words := make([]string, len(styles))
	for i, s := range styles {
		words[i] = s.word
	}
	return words
}

// Meanings of the words, for whoever chooses; "" of one that says it itself.
func (Style) Meanings() []string {
	meanings := make([]string, len(styles))
	for i, s := range styles {
		meanings[i] = s.means
	}
	return meanings
}

// NormOf is the norm of a style.
func NormOf(style Style) Norm { return styles[style].norm }
