package report

import (
	"ellwand/cmd/ellwand/app"
	"ellwand/pieces/found"
)

// Drawing is what import prints as JSON where it only draws what it found.
type Drawing struct {
	Title string         `json:"title"`
	Found []FoundOutline `json:"found"`
	Notes []string       `json:"notes"`
	Files []string       `json:"files"`
}

// FoundOutline is an outline that was found, with what it lacks to be a piece: "name",
// "cut", "grain", "allowance".
type FoundOutline struct {
	Number   int      `json:"number"`
	Name     string   `json:"name"`
	Size     string   `json:"size,omitempty"`
	AcrossMM float64  `json:"across_mm"` // in the drawing
	UpMM     float64  `json:"up_mm"`
	Lacks    []string `json:"lacks"`
	IsFaulty bool     `json:"is_faulty"` // no piece can be made of it
}

var lackWords = map[found.Question]string{found.AskName: "name", found.AskCut: "cut", found.AskGrain: "grain",
	found.AskFold: "fold", found.AskAllowance: "allowance"}

// DrawingOf what was found, with sentences about it.
func DrawingOf(all app.Imported, notes, files []string) Drawing {
	out := Drawing{Title: all.Title, Found: []FoundOutline{}, Notes: append([]string{}, notes...),
		Files: append([]string{}, files...)}
	for _, f := range all.Found {
		across, up := f.Extent()
		one := FoundOutline{Number: f.Number, Name: f.Name, Size: f.Size, AcrossMM: tidy(across), UpMM: tidy(up),
			Lacks: []string{}, IsFaulty: f.Fault != nil}
		for _, q := range f.Missing(found.Said{}) {
			one.Lacks = append(one.Lacks, lackWords[q])
		}
		out.Found = append(out.Found, one)
	}
	return out
}
