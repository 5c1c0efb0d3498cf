// Package role names what the pieces of our own blocks are to their garment. A role
// is a value: it is compared, whatever the piece is called.
package role

import (
	"ellwand/pieces/language"
	"ellwand/pieces/seams"
)

// Role of a piece in its garment. The zero Role is None.
type Role uint8

// The roles.
const (
	None Role = iota // a part, a lining, or a piece that people have drawn
	FrontBodice
	BackBodice
	SideFrontBodice
	SideBackBodice
	Yoke
	Sleeve
	TopSleeve
	UnderSleeve
	FrontSkirt
	BackSkirt
	CircleSkirt
	CircleSkirtPanel
	Gore
	PleatedSkirtPanel
	FrontTrousers
	BackTrousers
	FrontKimono
	BackKimono
	FrontKaftan
	BackKaftan
	Apron
	BagPanel
	roleCount
)

// roleWords are the roles in words: the one place where they stand.
var roleWords = [roleCount]string{
	FrontBodice:       "front bodice",
	BackBodice:        "back bodice",
	SideFrontBodice:   "side front bodice",
	SideBackBodice:    "side back bodice",
	Yoke:              "yoke",
	Sleeve:            "sleeve",
	TopSleeve:         "top sleeve",
	UnderSleeve:       "under sleeve",
	FrontSkirt:        "front skirt",
	BackSkirt:         "back skirt",
	CircleSkirt:       "circle skirt",
	CircleSkirtPanel:  "circle skirt panel",
	Gore:              "gore",
	PleatedSkirtPanel: "pleated skirt panel",
	FrontTrousers:     "front trousers",
	BackTrousers:      "back trousers",
	FrontKimono:       "front kimono",
	BackKimono:        "back kimono",
	FrontKaftan:       "front kaftan",
	BackKaftan:        "back kaftan",
	Apron:             "apron",
	BagPanel:          "bag panel",
}

// germanWords are the roles in German, beside the parts that our blocks add.
var germanWords = map[string]string{
	"front bodice": "Vorderteil", "back bodice": "Rückenteil", "side front bodice": "Seitenteil vorn",
	"side back bodice": "Seitenteil hinten", "yoke": "Passe", "sleeve": "Ärmel", "top sleeve": "Oberärmel",
	"under sleeve": "Unterärmel", "front skirt": "Rock vorn", "back skirt": "Rock hinten",
	"circle skirt":       "Tellerrock",
	"circle skirt panel": "Tellerrockbahn", "gore": "Bahn", "pleated skirt panel": "Faltenrockbahn",
	"front trousers": "Hose vorn", "back trousers": "Hose hinten", "front kimono": "Kimono vorn",
	"back kimono": "Kimono hinten", "front kaftan": "Kaftan vorn", "back kaftan": "Kaftan hinten", "apron": "Schürze",
	"bag panel": "Taschenteil", "collar": "Kragen", "cuff": "Manschette", "waistband": "Bund", "pocket": "Tasche",
	"pocket bag": "Taschenbeutel", "neck facing front": "Halsbeleg vorn", "neck facing back": "Halsbeleg hinten",
}

// Called is the name of a piece among words: of those that our blocks call so, in every
// language.
func Called(name string) language.Sentence {
	german, known := germanWords[name]
	if !known {
		german = name
	}
	return language.Pair(name, german)
}

// String words the role, which is the name of the piece that has it. None is empty.
func (r Role) String() string { return roleWords[r] }

// sides of the body on which the roles lie; none of the yoke, which lies on both.
var sides = map[Role]seams.Side{
	FrontBodice: seams.OnFront, SideFrontBodice: seams.OnFront, FrontSkirt: seams.OnFront,
	FrontTrousers: seams.OnFront, FrontKimono: seams.OnFront, FrontKaftan: seams.OnFront,
	BackBodice: seams.OnBack, SideBackBodice: seams.OnBack, BackSkirt: seams.OnBack,
	BackTrousers: seams.OnBack, BackKimono: seams.OnBack, BackKaftan: seams.OnBack,
}

// Side of the body on which a piece lies, front or back; none where it lies on both,
// or says nothing of it.
func (r Role) Side() seams.Side { return sides[r] }

// middle words ask for a panel alone that has kept the name of the whole.
const middle = "middle "

// asked are the roles of the pieces that people mean by a name: a seam may have made
// several of one, of which the first keeps its name.
var asked = map[string][]Role{
	FrontBodice.String():          {FrontBodice, SideFrontBodice, Yoke},
	BackBodice.String():           {BackBodice, SideBackBodice, Yoke},
	Sleeve.String():               {Sleeve, TopSleeve, UnderSleeve},
	middle + FrontBodice.String(): {FrontBodice},
	middle + BackBodice.String():  {BackBodice},
}

// Asked are the roles of the pieces that people may mean by a name; none by a name
// of their own, nor by that of a piece which is never cut in several.
func Asked(name string) []Role { return asked[name] }
