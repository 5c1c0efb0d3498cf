package report

import (
	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
)

// Print is what print gives as JSON.
type Print struct {
	Job    string `json:"job"`
	Pieces int    `json:"pieces"`
	Pages  int    `json:"pages"`
	Sheets int    `json:"sheets"`
	Paper  string `json:"paper"`
	File   string `json:"file"`
	Ended
}

// PrintOf the pieces of a job on a paper, in a file.
func PrintOf(work *job.Work, printed app.Printed, paper, file string) Print {
	return Print{Job: work.Name, Pieces: printed.Pieces, Pages: len(printed.Pages), Sheets: printed.Sheets, Paper: paper,
		File: file, Ended: endedOf(printed.Ended)}
}
