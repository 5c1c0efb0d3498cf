package job

import (
	"ellwand/cmd/ellwand/strict"
	"ellwand/fabric/cloth"
	"ellwand/pieces/language"
	"ellwand/pieces/seams"
)

// Border is a print that runs along one selvedge of a cloth.
type Border struct {
	Selvedge Choice[cloth.Side] `yaml:"selvedge" jsonschema_description:"the selvedge that it runs along: near (nearest to you, the cloth right side up, the cut end on your left) or far; near if not given"`
	Line     Measure            `yaml:"line" jsonschema_description:"how far the line for the hems lies from the edge of that selvedge"`
	Pieces   []Text             `yaml:"pieces" jsonschema:"minItems=1" jsonschema_description:"pieces that lie across the cloth with their straight hem on that line"`
	Hem      Text               `yaml:"hem" jsonschema_description:"the edge that is their hem; the one of that name if not given"`
}

// read gives the cloth its border.
func (b *Border) read(v values, path Path, name language.Sentence, c *cloth.Cloth) {
	if b == nil {
		return
	}
	path = path.Key("border")
	out := cloth.Border{Selvedge: choose(v, path.Key("selvedge"), name.Its("the selvedge of the border",
		"Webkante der Bordüre"), b.Selvedge),
		Pieces: texts(b.Pieces), Hem: seams.Called(string(b.Hem))}
	switch {
	case b.Line == "":
		v.fault(path, strict.Missing,
			"%s has a border without a line; add line: the distance of the hems from the edge "+
				"of that selvedge",
			"%s hat eine Bordüre ohne Linie; geben Sie an, wie weit die Säume von der Webkante liegen",
			name)
	case len(out.Pieces) == 0:
		v.fault(path, strict.Missing, "%s has a border and no pieces on it; add pieces: [skirt front, skirt back]",
			"%s hat eine Bordüre, auf der kein Teil liegt; nennen Sie die Teile, etwa Rock vorn, Rock "+
				"hinten", name)
	}
	if b.Line != "" {
		out.Line, _ = v.length(path.Key("line"), name.Its("the line of the border", "Linie der Bordüre"), b.Line)
	}
	c.Border = out
}
