package part

import (
	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
)

// Draft drafts a part: one piece, or a front and a back. The error is a
// sentence that names what is missing or cannot be.
func Draft(m Measures, o Options) (Block, error) {
	name := o.Name
	if name == "" {
		name = string(o.Kind)
	}
	if err := check(o, name); err != nil {
		return Block{}, err
	}
	if draw, ok := drawn[o.Kind]; ok {
		block, err := draw(m, o, name)
		if err != nil {
			return Block{}, err
		}
		return asStrips(o, name, block)
	}
	return Block{}, construct.About(subject.Kind).Refuse("there is no part %q; use one of: %s",
		"ein Zubehörteil %q gibt es nicht; es gibt: %s", o.Kind, kindList())
}

// drawn is how each kind is drafted.
var drawn = map[Kind]func(m Measures, o Options, name string) (Block, error){
	Collar: collar, ShirtCollar: shirtCollar, FlatCollar: flatCollar, MandarinCollar: mandarinCollar,
	Cuff: cuff, ButtonedCuff: buttonedCuff, SleevePlacket: sleevePlacket,
	NeckFacing: neckFacing, ArmholeFacing: armholeFacing, CombinedFacing: combinedFacing, Facing: anyFacing,
	Waistband: waistband, ShapedWaistband: shapedWaistband, GatheredSkirt: gatheredSkirt, StraightPanel: straightPanel,
	Belt: belt, Tie: tie, BiasStrip: biasStrip, PatchPocket: patchPocket, PocketBag: pocketBag,
}

func straightPanel(_ Measures, o Options, name string) (Block, error) {
	return Block{Pieces: []pieces.Piece{pieces.Rectangle(name, o.Length, o.Depth)}}, nil
}

func check(o Options, name string) error {
	switch {
	case o.Depth < 0:
		return construct.About(subject.Depth).Refuse("%s: the depth is %s; it cannot be negative",
			"%s: die Höhe ist %s; sie kann nicht negativ sein", called(name),
			construct.Length(o.Depth))
	case o.Length < 0:
		return construct.About(subject.Length).Refuse("%s: the length is %s; it cannot be negative",
			"%s: die Länge ist %s; sie kann nicht negativ sein", called(name),
			construct.Length(o.Length))
	case o.Fullness != 0 && (o.Fullness < 1 || o.Fullness > 5):
		return construct.About(subject.Fullness).Refuse("%s: a fullness of %.4g cannot be gathered; 1.5 to 3 is usual",
			"%s: eine Weite vom %.4g-Fachen lässt sich nicht einreihen; üblich ist das 1,5- bis 3-Fache",
			called(name), o.Fullness)
	case o.Depth == 0 && (o.Kind == GatheredSkirt || o.Kind == StraightPanel):
		return construct.About(subject.Depth).Refuse("%s: the length is missing: give its depth, from the upper edge "+
			"to the hem", "%s: die Länge fehlt: geben Sie die Höhe an, von der Oberkante bis zum Saum", called(name))
	case o.Length == 0 && o.Kind == StraightPanel:
		return construct.About(subject.Length).Refuse("%s: the width is missing: give its length along the upper edge",
			"%s: die Breite fehlt: geben Sie die Länge der Oberkante an",
			called(name))
	}
	return nil
}

func kindList() string {
	list := ""
	for i, kind := range Kinds() {
		if i > 0 {
			list += ", "
		}
		list += string(kind)
	}
	return list
}
