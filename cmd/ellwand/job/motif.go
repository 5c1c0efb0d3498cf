package job

import (
	"ellwand/cmd/ellwand/strict"
	"ellwand/fabric/cloth"
	"ellwand/pieces/language"
	"ellwand/pieces/marks"
)

// Motif is a figure of the print that is centred on pieces.
type Motif struct {
	Along  Measure `yaml:"along" jsonschema_description:"where the centre of one motif lies, from the cut end"`
	Across Measure `yaml:"across" jsonschema_description:"and from the edge of the selvedge nearest to you"`
	Pieces []Text  `yaml:"pieces" jsonschema:"minItems=1" jsonschema_description:"pieces on which a motif is centred, along and across"`
	Point  Text    `yaml:"point" jsonschema_description:"a mark or match point of those pieces on which its centre falls; their middle if not given"`
}

// read gives the cloth its motif.
func (m *Motif) read(v values, path Path, name language.Sentence, c *cloth.Cloth) {
	if m == nil {
		return
	}
	path = path.Key("motif")
	out := cloth.Motif{Pieces: texts(m.Pieces), Point: marks.Called(string(m.Point))}
	if len(out.Pieces) == 0 {
		v.fault(path, strict.Missing, "%s has a motif and no pieces to centre it on; add pieces: [front, back]",
			"%s hat ein Motiv, das auf keinem Teil mittig sitzt; nennen Sie die Teile", name)
	}
	if m.Along == "" || m.Across == "" {
		v.fault(path, strict.Missing,
			"%s: where is the centre of a motif? Add along: its distance from the cut end, "+
				"and across: from the edge of the selvedge",
			"%s: wo ist die Mitte eines Motivs? Geben Sie ihren Abstand von der Schnittkante und von "+
				"der Webkante an", name)
	} else {
		out.Along, _ = v.length(path.Key("along"), name.Its("the motif along", "Motiv längs"), m.Along)
		out.Across, _ = v.length(path.Key("across"), name.Its("the motif across", "Motiv quer"), m.Across)
	}
	c.Motif = out
}
