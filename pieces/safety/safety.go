// Package safety has the words of caution for all that is printed, by topic, so
// that each is said in one way everywhere. They are the usual cautions of the
// workroom [source.CommonPractice] and defer to the rules of the place.
package safety

// Blades is for whatever is cut from.
const Blades = "Blades: cut away from yourself, keep fingers behind the ruler, close the rotary cutter whenever you " +
	"put it down, and keep blades from children."

// Irons is for whatever is sewn up and pressed.
const Irons = "Irons: plate and steam burn. Stand the iron on its heel, keep its cord off the floor, and unplug it " +
	"when you leave."

// Paper is for sheets that are trimmed and joined.
const Paper = "Cut paper on a mat; keep fingers behind the ruler and close the cutter when you put it down."

// forChildren is how clothing that children wear is made.
const forChildren = "no cords or ties at hood and neck, no loose ones elsewhere; sew buttons and " +
	"other small parts on so that no child can pull them off; " +
	"make nightwear close-fitting, of cloth that does not flare up. Follow the rules of your country."

// Children is for clothing that children wear.
const Children = "Children's clothing: " + forChildren

// PerhapsChildren is for clothing of a size that children wear, and small adults.
const PerhapsChildren = "If this is for a child: " + forChildren

// Law is for offers and quotes.
const Law = "Tax and terms follow the law of the place where the work is done."

// Wearer is who wears what is cut, as far as it is known.
type Wearer int

const (
	// Adult is anybody of whom nothing speaks for a child.
	Adult Wearer = iota
	// PerhapsChild is somebody of a child's size.
	PerhapsChild
	// Child is somebody who is sized as a child.
	Child
)

// Cutting are the cautions for what is cut from, for the youngest who wears it.
func Cutting(youngest Wearer) []string {
	out := []string{Blades, Irons}
	switch youngest {
	case Child:
		return append(out, Children)
	case PerhapsChild:
		return append(out, PerhapsChildren)
	}
	return out
}
