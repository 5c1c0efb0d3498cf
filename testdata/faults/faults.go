// Package faults lists deliberate faults of the program, each of which must be refused
// at run time: no layout and no figure that is wrong may reach anyone. `make faults`
// puts each into a copy of the code, builds it, and sees it refuse a good job.
package faults

import (
	_ "embed"

	"github.com/goccy/go-yaml"
)

//go:embed faults.yaml
var listed []byte

// Fault is one change of the code.
type Fault struct {
	Name string
	// Package is the folder in one of whose files Old stands, once, which becomes New.
	Package, Old, New string
	// Job is the name of a good job, and Run the command that must refuse it: JOB is
	// the job's file, OUT a folder.
	Job, Run string
}

// List of faults, and the jobs by name.
type List struct {
	Jobs   map[string]string
	Faults []Fault
}

// Read the list.
func Read() (List, error) {
	var out List
	err := yaml.UnmarshalWithOptions(listed, &out, yaml.Strict())
	for i := range out.Faults {
		if out.Faults[i].Run == "" {
			out.Faults[i].Run = "estimate JOB --passes 20"
		}
	}
	return out, err
}
