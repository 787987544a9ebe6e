"""Every sentence that the program says, by its role; `layout.messages` holds what stands on the parts."""
