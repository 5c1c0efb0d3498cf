package part

import "ellwand/pieces/language"

// germanKinds are the words of the kinds in German; in English they are their words.
var germanKinds = map[Kind]string{
	Collar: "Kragen", NeckFacing: "Halsbeleg", Cuff: "Manschette", Waistband: "Bund", ShapedWaistband: "Formbund",
	GatheredSkirt: "gereihter Rock", StraightPanel: "gerade Bahn", ShirtCollar: "Hemdkragen mit Steg",
	FlatCollar: "flacher Kragen", MandarinCollar: "Stehkragen", ButtonedCuff: "Knopfmanschette",
	SleevePlacket: "Ärmelschlitzbeleg", ArmholeFacing: "Armlochbeleg", CombinedFacing: "Beleg an Hals und Armloch",
	Facing: "Beleg", Belt: "Gürtel", Tie: "Bindeband", BiasStrip: "Schrägstreifen", PatchPocket: "aufgesetzte Tasche",
	PocketBag: "Taschenbeutel",
}

// In words the kind in a language.
func (k Kind) In(l language.Language) string {
	if german, known := germanKinds[k]; known && l == language.German {
		return german
	}
	return string(k)
}

// called is the name of a part among words: of one that is called by its kind, in every
// language.
func called(name string) language.Sentence {
	return language.Pair(name, Kind(name).In(language.German))
}
