package main

import (
	"github.com/spf13/cobra"
)

// layFlags are the options of the commands that give a layout.
type layFlags struct {
	searchFlags
	layout string // file or folder for the layout JSON, or empty
	from   fromFlags
}

func (l *layFlags) register(cmd *cobra.Command) {
	l.searchFlags.register(cmd)
	cmd.Flags().StringVar(&l.layout, "layout", "", "file or folder to write the layout to, as JSON")
}
